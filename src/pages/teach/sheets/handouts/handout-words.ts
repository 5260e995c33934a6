import type { Language } from '../../../../language/language.ts';
import type { handouts } from '../../../../language/messages/en/handouts.ts';
import type { trace } from '../../../../language/messages/en/trace.ts';
import type { Glossary } from '../../../../lessons/glossary.ts';
import { loadGlossary } from '../../../lessons/load-glossary.ts';
import type { ToldSeason } from '../../told-season.ts';

/** Everything the handouts say. */
export interface HandoutWords {
  readonly own: typeof handouts;
  readonly cloths: (typeof trace)['cloths'];
  readonly glossary: Glossary;
}
/** What a handout is made of. */
export interface HandoutProps {
  readonly words: HandoutWords;
  /** The season whose numbers it tells. */
  readonly told: ToldSeason;
}
export type HandoutId = keyof (typeof handouts)['names'];

/** The words of the handouts in a language, fetched with their page. */
export async function loadHandoutWords(language: Language): Promise<HandoutWords> {
  const [own, traced, glossary] = await Promise.all([
    language === 'es'
      ? import('../../../../language/messages/es/handouts.ts')
      : import('../../../../language/messages/en/handouts.ts'),
    language === 'es'
      ? import('../../../../language/messages/es/trace.ts')
      : import('../../../../language/messages/en/trace.ts'),
    loadGlossary(language),
  ]);
  return { own: own.handouts, cloths: traced.trace.cloths, glossary };
}
