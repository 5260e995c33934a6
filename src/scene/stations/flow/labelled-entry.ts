import type { InAccount, Masses, OutAccount } from './flow-input.ts';

/** One account of a ledger, with its words. */
export interface LabelledEntry<Account extends string> {
  readonly account: Account;
  readonly masses: Masses;
  /** Its name, already translated. */
  readonly name: string;
  /** How much of it has passed when a share of the work is done, with its unit; all of it reads as in the table. */
  readonly amount: (share: number) => string;
}
export type InEntry = LabelledEntry<InAccount>;
export type OutEntry = LabelledEntry<OutAccount>;

/** An account's entry, or undefined where the season has none. */
export const entryOf = <Account extends string>(
  entries: readonly LabelledEntry<Account>[],
  account: Account,
): LabelledEntry<Account> | undefined => entries.find((entry) => entry.account === account);
