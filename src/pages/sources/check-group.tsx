import type { Check } from '../../checks/check.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { type CheckAnswer, expectedText, oursText, toolNames } from './check-rows.ts';
import { RowGroup } from './row-group.tsx';
import { sourcesWords } from './sources-words.ts';

interface CheckGroupProps {
  readonly title: string;
  readonly checks: readonly Check[];
  readonly answers: ReadonlyMap<string, CheckAnswer>;
  readonly open?: boolean;
}

/** Some checks under one heading, to be opened. */
export function CheckGroup({ title, checks, answers, open = false }: CheckGroupProps) {
  const { formats } = useWords();
  if (checks.length === 0) return null;
  return (
    <RowGroup
      className="check-group"
      title={`${title} (${formats.count(checks.length)})`}
      open={open}
      rows={() => checks.map((check) => <CheckRow key={check.id} check={check} answer={answers.get(check.id)} />)}
    />
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
        {words.published} <b>{expectedText(check.expected, words, formats)}</b>
        {check.unit === '' ? '' : ` ${check.unit}`}. {words.ours} <b>{answer ? oursText(answer.ours, formats) : '…'}</b>
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
      {check.tool ? <p class="caption">{fill(words.tool, { name: toolNames[check.tool.name] })}</p> : null}
    </li>
  );
}
