import { allChecks } from '../../checks/all-checks.ts';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { expectedText, oursText } from './check-rows.ts';
import { sourcesWords } from './sources-words.ts';

/** Every known miss of the check table, with both figures and the reason, as recorded. */
export function KnownMisses() {
  const { language, formats } = useWords();
  const words = sourcesWords(language);
  const misses = allChecks.filter(({ kind }) => kind === 'knownMiss');
  return (
    <details class="known-misses">
      <summary>
        {words.misses} ({formats.count(misses.length)})
      </summary>
      <ul>
        {misses.map((check) =>
          check.kind === 'knownMiss' ? (
            <li key={check.id}>
              <span lang="en">{check.what}</span>. {words.published} {expectedText(check.expected, words, formats)}
              {check.unit === '' ? '' : ` ${check.unit}`}; {words.ours} {oursText(check.recorded.value, formats)}.{' '}
              <span class="caption" lang="en">
                {check.reason} {fill('({source})', { source: check.source })}
              </span>
            </li>
          ) : null,
        )}
      </ul>
    </details>
  );
}
