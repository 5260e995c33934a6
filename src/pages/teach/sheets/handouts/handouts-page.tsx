import type { ComponentType } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { useWords } from '../../../../language/words.ts';
import { ChoiceRow } from '../../../../ui/choice-row.tsx';
import { PatchButton } from '../../../../ui/patch-button.tsx';
import { useLoaded } from '../../../lessons/use-loaded.ts';
import { hashOf } from '../../../route.ts';
import { toldSeason } from '../../told-season.ts';
import type { SheetWords } from '../question-text.ts';
import { ChainHandout } from './chain-handout.tsx';
import { ClothHandout } from './cloth-handout.tsx';
import { FiberHandout } from './fiber-handout.tsx';
import { GlossaryHandout } from './glossary-handout.tsx';
import { type HandoutId, type HandoutProps, loadHandoutWords } from './handout-words.ts';
import { TagHandout } from './tag-handout.tsx';
import { TourHandout } from './tour-handout.tsx';
import './handouts.css';

/** The handouts, in the order shown. */
const handoutOf: Readonly<Record<HandoutId, ComponentType<HandoutProps>>> = {
  chain: ChainHandout,
  fiber: FiberHandout,
  cloth: ClothHandout,
  tag: TagHandout,
  tour: TourHandout,
  glossary: GlossaryHandout,
};
const handoutIds = Object.keys(handoutOf) as HandoutId[];

export interface HandoutsPageProps {
  readonly page: SheetWords['page'];
  /** The season of the plan that led here; empty for none. */
  readonly query: string;
}

/** One handout at a time, as it prints, with the numbers of the plan's season. */
export function HandoutsPage({ page, query }: HandoutsPageProps) {
  const { language, messages } = useWords();
  const words = useLoaded(() => loadHandoutWords(language), [language]);
  const [id, setId] = useState<HandoutId>('chain');
  const told = useMemo(() => toldSeason(query), [query]);
  useEffect(() => {
    if (words) document.title = `${words.own.title}: ${messages.common.product}`;
  }, [words, messages]);
  if (!words) return <p role="status">{messages.common.loading}</p>;
  const { own } = words;
  const Handout = handoutOf[id];
  return (
    <>
      <div class="sheets-choose no-print">
        <h1>{own.title}</h1>
        <p>{own.lead}</p>
        <div class="choose-handout">
          <ChoiceRow
            label={own.choose}
            options={handoutIds.map((each) => ({ value: each, label: own.names[each] }))}
            value={id}
            onChoose={setId}
          />
        </div>
        <PatchButton ink="madder" primary onPress={() => print()}>
          {own.print}
        </PatchButton>
        <p>
          <a href={hashOf({ page: 'card', query })}>{own.seasonCard}</a>
        </p>
      </div>
      <section class="sheets-shown" aria-label={page.preview}>
        <div class="sheet-set">
          <article class="paper-sheet handout" data-handout={id}>
            <h2>{own.names[id]}</h2>
            <Handout words={words} told={told} />
            <footer class="sheet-foot">{own.free}</footer>
          </article>
        </div>
      </section>
    </>
  );
}
