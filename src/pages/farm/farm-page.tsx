import { useEffect, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { farmOf, farms } from '../../model/farms.ts';
import type { Era, Scenario } from '../../model/scenario.ts';
import type { StationId } from '../../model/station.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import type { Theme } from '../preferences.ts';
import { inEra, thirtiesFarm } from './era-change.ts';
import { FarmFiles } from './farm-files.tsx';
import { FarmLink } from './farm-link.tsx';
import { FarmQuilt } from './farm-quilt.tsx';
import { FarmTexts } from './farm-texts.tsx';
import { farmWords } from './farm-words.ts';
import { PlacePlan } from './place-plan.tsx';
import { ShelfList } from './shelf-list.tsx';
import { StationPlan } from './station-plan.tsx';
import { useDraft } from './use-draft.ts';
import './farm.css';

export interface FarmPageProps {
  /** The query of a link to begin with; empty for the farm changed last. */
  readonly query: string;
  readonly theme: Theme;
}

/** The stations in plain groups: where each thing is decided. */
const groups = [
  { id: 'field', stations: ['planting', 'bloom', 'boll'] },
  { id: 'harvest', stations: ['harvest', 'module'] },
  { id: 'gin', stations: ['cleaning', 'ginning', 'pressing', 'classing'] },
  { id: 'mill', stations: ['spinning', 'weaving', 'sewing'] },
] as const satisfies readonly { readonly id: string; readonly stations: readonly StationId[] }[];

const withDecision = (scenario: Scenario, station: StationId, some: object): Scenario => ({
  ...scenario,
  decisions: { ...scenario.decisions, [station]: { ...scenario.decisions[station], ...some } },
});

/** A farm and a gin of one's own: every field and every decision of a season, from one of the six farms on. */
export default function FarmPage({ query, theme }: FarmPageProps) {
  const { messages, language } = useWords();
  const words = farmWords(language);
  const hand = useDraft(query);
  const [told, setTold] = useState('');
  const { scenario, base } = hand.draft;
  const { product } = messages.common;
  useEffect(() => {
    document.title = `${words.title}: ${product}`;
  }, [words, product]);
  const moveTo = (era: Era) => {
    hand.change((farm) => inEra(farm, era));
    setTold(era === 'thirties' ? fill(words.eraSet, { farm: thirtiesFarm.name[language] }) : '');
  };
  return (
    <main id="main" class="farm-page" tabIndex={-1}>
      <div class="farm-head">
        <h1>{words.title}</h1>
        <p>{words.lead}</p>
        <ChoiceRow
          label={words.begin}
          help={words.beginHelp}
          options={farms.map((farm) => ({ value: farm.id, label: farm.name[language] }))}
          value={base.id}
          onChoose={(id) => hand.begin(farmOf(id) ?? base)}
        />
      </div>
      <div class="farm-plan">
        <FarmTexts
          key={scenario.id}
          scenario={scenario}
          base={base}
          onTexts={(texts) => hand.change((farm) => ({ ...farm, ...texts }))}
        />
        <section class="farm-group" aria-label={words.place}>
          <h2>{words.place}</h2>
          <PlacePlan hand={hand} onEra={moveTo} />
          <p role="status" class="caption">
            {told}
          </p>
        </section>
        {groups.map(({ id, stations }) => (
          <section key={id} class="farm-group" aria-label={words.groups[id]}>
            <h2>{words.groups[id]}</h2>
            {stations.map((station) => (
              <StationPlan
                key={station}
                station={station}
                scenario={scenario}
                base={base}
                theme={theme}
                onDecide={(key, value) => hand.change((farm) => withDecision(farm, station, { [key]: value }))}
                onPutBack={() => hand.change((farm) => withDecision(farm, station, base.decisions[station]))}
              />
            ))}
          </section>
        ))}
      </div>
      <aside class="farm-side">
        <FarmQuilt scenario={scenario} base={base} theme={theme} />
        <FarmLink hand={hand} />
        <ShelfList hand={hand} />
        <FarmFiles scenario={scenario} onOpen={hand.add} />
      </aside>
    </main>
  );
}
