import type { FormulaLine, WorkingText } from './working-source.ts';

/** 'c_1' as a letter with its index. */
function Letter({ name }: { readonly name: string }) {
  const [letter, index] = name.split('_');
  return (
    <i class="working-symbol">
      {letter}
      {index === undefined ? null : <sub>{index}</sub>}
    </i>
  );
}

/** A working set out: the formula, and the same with its numbers; what goes in, line by line; what comes out. */
export function WorkingBody({ text }: { readonly text: WorkingText }) {
  const { formula, lines, headings } = text;
  return (
    <>
      {formula ? (
        <>
          <Formulas heading={formula.headings.shown} lines={formula.lines} />
          <Formulas heading={formula.headings.filled} lines={formula.lines} filled />
          {formula.notes.length > 0 ? <p class="caption working-notes">{formula.notes.join(' ')}</p> : null}
        </>
      ) : null}
      <table>
        <caption>{headings.lines}</caption>
        <thead>
          <tr>
            <th scope="col">{headings.step}</th>
            <th scope="col" class="number">
              {headings.value}
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ symbol, name, value, from, source }, at) => (
            <tr key={at}>
              <th scope="row">
                {symbol === undefined ? null : <Letter name={symbol} />} {name}
                <span class="working-from">
                  {from}
                  {source === undefined ? null : <span lang="en">{source}</span>}
                </span>
              </th>
              <td class="number">{value}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr class="sum">
            <th scope="row">{headings.result}</th>
            <td class="number working-result">{text.result}</td>
          </tr>
        </tfoot>
      </table>
    </>
  );
}

interface FormulasProps {
  readonly heading: string;
  readonly lines: readonly FormulaLine[];
  /** With the numbers of the season in the place of the letters. */
  readonly filled?: boolean;
}

function Formulas({ heading, lines, filled = false }: FormulasProps) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a long formula that scrolls sideways must be scrollable by keyboard
    <section class="working-formula" aria-label={heading} tabIndex={0}>
      <p class="caption">{heading}</p>
      {lines.map(({ symbol, shown, filled: withNumbers, exact }) => (
        <div key={symbol} class="working-math">
          {symbol === undefined ? null : (
            <span>
              <Letter name={symbol} /> =
            </span>
          )}
          {/* The MathML comes from our own formulas, made when the app was built. */}
          <span dangerouslySetInnerHTML={{ __html: filled ? withNumbers : shown }} />
          {filled ? <span>= {exact}</span> : null}
        </div>
      ))}
    </section>
  );
}
