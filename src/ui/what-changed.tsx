import { Fragment } from 'preact';
import { useId } from 'preact/hooks';
import { useWords } from '../language/words.ts';
import { type Trust, TrustMark } from './trust-mark.tsx';
import { WorkingNumber } from './working-number.tsx';
import { WorkingRow } from './working-place.tsx';
import type { WorkingSource } from './working-source.ts';

/** One thing that may have changed. Values stand in words and units already. */
export interface Change {
  readonly label: string;
  readonly help?: string;
  readonly before?: string;
  readonly after: string;
  /** What the number rests on, where it is memory, common practice or assumption. */
  readonly trust?: Trust;
  /** How the number was come by, and the one before. */
  readonly working?: WorkingSource;
  readonly workingBefore?: WorkingSource;
}

export interface WhatChangedProps {
  readonly heading: string;
  readonly changes: readonly Change[];
  readonly headingUnseen?: boolean;
}

/** A table of values before and after; what stayed says so. */
export function WhatChanged({ heading, changes, headingUnseen = false }: WhatChangedProps) {
  const { messages } = useWords();
  const { common } = messages;
  const id = useId();
  const withBefore = changes.some((change) => change.before !== undefined);
  return (
    <div class="what-changed">
      <h3 id={id} class={headingUnseen ? 'unseen' : undefined}>
        {heading}
      </h3>
      <table aria-labelledby={id}>
        <thead class={withBefore ? undefined : 'unseen'}>
          <tr>
            <th scope="col">
              <span class="unseen">{heading}</span>
            </th>
            {withBefore ? (
              <th scope="col" class="number">
                {common.before}
              </th>
            ) : null}
            <th scope="col" class="number">
              {withBefore ? common.after : common.value}
            </th>
          </tr>
        </thead>
        <tbody>
          {changes.map((change) => {
            const same = change.before === change.after;
            return (
              <Fragment key={change.label}>
                <tr class={withBefore && !same && change.before !== undefined ? 'changed' : undefined}>
                  <th scope="row" title={change.help}>
                    {change.label}
                    {change.trust ? <TrustMark trust={change.trust} label={change.label} /> : null}
                  </th>
                  {withBefore ? (
                    <td class="number">
                      {same ? (
                        <i>{common.same}</i>
                      ) : (
                        <WorkingNumber text={change.before ?? ''} source={change.workingBefore} />
                      )}
                    </td>
                  ) : null}
                  <td class="number after">
                    <WorkingNumber text={change.after} source={change.working} />
                  </td>
                </tr>
                <WorkingRow sources={[change.working, change.workingBefore]} columns={withBefore ? 3 : 2} />
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
