import { averageFacts, statedAverages } from '../model/trace/chain-averages.ts';
import type { LinkDifference } from '../model/trace/why-it-differs.ts';
import { above, exact, formula, procedure, read, step } from './steps.ts';
import { chainInput, type TraceAccount } from './trace-chain.ts';
import type { UnitKey } from './unit-key.ts';
import type { FormulaWorking, ProcedureWorking } from './working.ts';

const unitOf = ({ link }: LinkDifference): UnitKey => (link === 'bollGrams' ? 'grams' : 'none');

/** The stated average of a link: where it was read. */
export const statedWorking = (difference: LinkDifference, text: string): ProcedureWorking =>
  procedure(
    [
      step(
        `trace_${difference.link}`,
        exact(statedAverages('middle')[difference.link], unitOf(difference)),
        read(averageFacts[difference.link]),
      ),
    ],
    { as: 'text', text },
  );

/** The season's own value of a link: two of its masses, one over the other. */
export function ownWorking(
  account: Pick<TraceAccount, 'season' | 'averages'>,
  difference: LinkDifference,
  text: string,
): FormulaWorking | ProcedureWorking {
  const { inputs, first } = chainInput(account, 'middle', difference.link, 'x', unitOf(difference));
  const [made] = first;
  return made
    ? formula(made.formula, inputs, made.value, { as: 'text', text })
    : procedure(inputs, { as: 'text', text });
}

/** What one link adds to the bolls, or takes off them. */
export const differenceWorking = (difference: LinkDifference, text: string): ProcedureWorking =>
  procedure(
    [
      step('traceStated', exact(difference.stated, unitOf(difference)), read(averageFacts[difference.link])),
      step('traceOwn', exact(difference.own, unitOf(difference)), { at: 'ledgers' }),
      step('traceBollsBefore', exact(difference.bollsBefore, 'bolls'), above),
      step('traceBollsAfter', exact(difference.bollsAfter, 'bolls'), above),
    ],
    { as: 'text', text },
  );

/** The bolls at one end of the links: with the stated averages alone, or with the season's own throughout. */
export const endWorking = (of: LinkDifference, side: 'bollsBefore' | 'bollsAfter', text: string): ProcedureWorking =>
  procedure(
    [
      step(side === 'bollsBefore' ? 'traceBollsBefore' : 'traceBollsAfter', exact(of[side], 'bolls'), {
        at: 'traceStep',
      }),
    ],
    { as: 'text', text },
  );

/** What all links add together. */
export const sumWorking = (differences: readonly LinkDifference[], text: string): ProcedureWorking =>
  procedure(
    [
      step('traceBollsBefore', exact(differences[0]!.bollsBefore, 'bolls'), { at: 'traceStep' }),
      step('traceBollsAfter', exact(differences.at(-1)!.bollsAfter, 'bolls'), { at: 'traceStep' }),
    ],
    { as: 'text', text },
  );
