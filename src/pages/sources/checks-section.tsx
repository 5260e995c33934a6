import { useMemo } from 'preact/hooks';
import { allChecks } from '../../checks/all-checks.ts';
import type { Check, CheckLink } from '../../checks/check.ts';
import { summariseChecks } from '../../checks/summarise-checks.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { type CheckAnswer, checkCsv, expectedText, oursText } from './check-rows.ts';
import { saveCsv } from './save-csv.ts';
import { sourcesWords } from './sources-words.ts';
import { type CheckRun, useChecks } from './use-checks.ts';

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
      <PatchButton onPress={() => saveCsv('seamfield-checks.csv', checkCsv(run.answers))}>
        {words.saveChecks}
      </PatchButton>
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

interface CheckGroupProps {
  readonly title: string;
  readonly checks: readonly Check[];
  readonly answers: ReadonlyMap<string, CheckAnswer>;
  readonly open?: boolean;
}

function CheckGroup({ title, checks, answers, open = false }: CheckGroupProps) {
  const { formats } = useWords();
  if (checks.length === 0) return null;
  return (
    <details class="check-group" open={open}>
      <summary>
        {title} ({formats.count(checks.length)})
      </summary>
      <ul>
        {checks.map((check) => (
          <CheckRow key={check.id} check={check} answer={answers.get(check.id)} />
        ))}
      </ul>
    </details>
  );
}

function CheckRow({ check, answer }: { readonly check: Check; readonly answer: CheckAnswer | undefined }) {
  const { language, formats } = useWords();
  const words = sourcesWords(language);
  const miss = check.kind === 'knownMiss';
  const verdict = !answer ? '' : !answer.passed ? words.fails : miss ? words.missed : words.holds;
  return (
    <li class="check-row" data-passed={answer ? String(answer.passed) : undefined}>
      <p lang="en" class="check-what">
        {check.what}
      </p>
      <p>
        {words.published} <b>{expectedText(check.expected, words, formats)}</b> {check.unit}. {words.ours}{' '}
        <b>{answer ? oursText(answer.ours, formats) : '…'}</b>
        {verdict ? `: ${verdict}` : ''}. <i>{words.kinds[check.kind]}</i>
      </p>
      <p class="caption" lang="en">
        {check.source}
      </p>
      {check.kind === 'knownMiss' ? (
        <p class="caption">
          {words.reason}: <span lang="en">{check.reason}</span>
        </p>
      ) : null}
      {check.tool ? <p class="caption">{fill(words.tool, { name: check.tool.name })}</p> : null}
    </li>
  );
}
