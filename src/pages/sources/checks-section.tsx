import { useMemo } from 'preact/hooks';
import { allChecks } from '../../checks/all-checks.ts';
import type { CheckLink } from '../../checks/check.ts';
import { summariseChecks } from '../../checks/summarise-checks.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { CheckGroup } from './check-group.tsx';
import { checkCsv, toolNames } from './check-rows.ts';
import { saveCsv } from './save-csv.ts';
import { sourcesWords } from './sources-words.ts';
import { type CheckRun, useChecks } from './use-checks.ts';

/** The tool of each check whose figure is a tool's answer. */
const asked = allChecks.flatMap(({ tool }) => (tool ? [toolNames[tool.name]] : []));
const links = [...new Set(allChecks.map(({ link }) => link))] as readonly CheckLink[];

/** Every check, computed on this device, with our figure beside the published one, and the summary by kind. */
export function ChecksSection() {
  const { language, formats } = useWords();
  const words = sourcesWords(language);
  const run = useChecks();
  const done = run.answers.size === allChecks.length;
  const misses = allChecks.filter(({ kind }) => kind === 'knownMiss');
  return (
    <section class="checks" aria-label={words.checks}>
      <h2>{words.checks}</h2>
      <p>{words.checksLead}</p>
      <p role="status" class="caption">
        {run.failed
          ? words.stopped
          : done
            ? ''
            : fill(words.running, { done: formats.count(run.answers.size), all: formats.count(allChecks.length) })}
      </p>
      {done ? <Summary run={run} /> : null}
      <p class="caption">
        {fill(words.tools, { count: formats.count(asked.length), names: [...new Set(asked)].join(', ') })}
      </p>
      <KindMeanings />
      <PatchButton onPress={() => saveCsv('seamfield-checks.csv', checkCsv(run.answers))}>
        {words.saveChecks}
      </PatchButton>
      {links.map((link) => (
        <CheckGroup
          key={link}
          title={words.links[link]}
          checks={allChecks.filter((check) => check.link === link)}
          answers={run.answers}
        />
      ))}
      <h2>{words.misses}</h2>
      <CheckGroup title={words.kinds.knownMiss} checks={misses} answers={run.answers} open />
    </section>
  );
}

function Summary({ run }: { readonly run: CheckRun }) {
  const { language, formats } = useWords();
  const words = sourcesWords(language);
  const summary = useMemo(
    () =>
      summariseChecks(
        allChecks.map((check) => ({ check, ours: '', passed: run.answers.get(check.id)?.passed ?? false })),
      ),
    [run.answers],
  );
  return (
    <ul class="check-summary">
      {Object.entries(summary).map(([kind, count]) => (
        <li key={kind} data-kind={kind}>
          <b>{formats.count(count)}</b> {words.summary[kind as keyof typeof summary]}
        </li>
      ))}
    </ul>
  );
}

/** Which kinds count, and why the others do not. */
function KindMeanings() {
  const { language } = useWords();
  const words = sourcesWords(language);
  const kinds = Object.keys(words.kinds) as (keyof typeof words.kinds)[];
  return (
    <details class="check-group kind-meanings">
      <summary>{words.kindsLead}</summary>
      <dl>
        {kinds.map((kind) => (
          <div key={kind}>
            <dt>{words.kinds[kind]}</dt>
            <dd>{words.kindMeans[kind]}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
