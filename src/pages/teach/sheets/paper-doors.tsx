import type { Language } from '../../../language/language.ts';
import { useWords } from '../../../language/words.ts';
import { useLoaded } from '../../lessons/use-loaded.ts';
import { hashOf } from '../../route.ts';
import { paperPageIds } from './paper-page-id.ts';

const loadSheets = async (language: Language) =>
  (language === 'es'
    ? await import('../../../language/messages/es/sheets.ts')
    : await import('../../../language/messages/en/sheets.ts')
  ).sheets;

/** The teacher's way to everything that prints, from the season of the plan. The only place that leads to the keys: pupils have no use for this page. */
export function PaperDoors({ season }: { readonly season: string }) {
  const { language } = useWords();
  const page = useLoaded(() => loadSheets(language), [language]);
  if (!page) return null;
  return (
    <section class="teach-needs" aria-labelledby="teach-papers">
      <h2 id="teach-papers">{page.papers}</h2>
      <dl>
        {paperPageIds.map((id) => (
          <div key={id}>
            <dt>
              <a class="teach-open" href={hashOf({ page: 'paper', id, query: season })}>
                {page.doors[id].name}
              </a>
            </dt>
            <dd>{page.doors[id].says}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
