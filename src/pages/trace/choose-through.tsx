import { useId } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { farmOf, farms } from '../../model/farms.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { farmWords } from '../farm/farm-words.ts';
import { hashOf } from '../route.ts';
import type { TraceAsked } from './trace-link.ts';
import type { Through } from './trace-of.ts';
import type { TraceWords } from './use-trace-words.ts';

export interface ChooseThroughProps {
  readonly through: Through;
  readonly asked: TraceAsked;
  /** Where the season came from: an open season, a link, or nowhere. */
  readonly from: 'open' | 'link' | 'default';
  readonly said: TraceWords;
  readonly onAsk: (some: Partial<TraceAsked>) => void;
}

/** Whose field, gin and mill: the season in force, the first season of one of the farms, or the stated averages. */
export function ChooseThrough({ through, asked, from, said, onAsk }: ChooseThroughProps) {
  const { formats, language } = useWords();
  const id = useId();
  const { run } = through.opened;
  const { scenario, seed } = run;
  const query = encodeRun(run);
  const farm = scenario.name[language] || farmWords(language).unnamed;
  const named = { farm, seed: formats.number(seed, 0) };
  const others = farms.filter((each) => encodeRun({ scenario: each, seed: 1 }) !== query);
  const own = from === 'open' ? said.ofSeasonPage : said.ofSeason;
  return (
    <>
      <div class="trace-field trace-through">
        <label class="control-label" for={id}>
          {said.through}
        </label>
        <select
          id={id}
          class="typed"
          value={asked.stated ? 'stated' : 'season'}
          onChange={(event) => {
            const { value } = event.currentTarget;
            const other = farmOf(value);
            if (value === 'stated') onAsk({ stated: true });
            else if (other) onAsk({ stated: false, run: encodeRun({ scenario: other, seed: 1 }) });
            else onAsk({ stated: false });
          }}
        >
          <option value="season">{fill(own, named)}</option>
          {others.map((each) => (
            <option key={each.id} value={each.id}>
              {fill(said.ofSeason, { farm: each.name[language], seed: formats.count(1) })}
            </option>
          ))}
          <option value="stated">{said.stated}</option>
        </select>
      </div>
      <p class="caption trace-which" role="status">
        {asked.stated ? (
          said.statedNote
        ) : (
          <>
            {fill(from === 'default' ? said.defaultSeason : said.linkedSeason, named)}{' '}
            {through.missing ? `${said[through.missing]} ` : ''}
            <a href={hashOf({ page: 'season', station: 'planting', query })}>{said.openSeason}</a>
          </>
        )}
      </p>
    </>
  );
}
