import { fill } from '../../language/fill.ts';
import type { Words } from '../../language/words.ts';
import { chainLedger, closingErrorRelative, type MassEntry } from '../../model/ledger.ts';
import { totalDryKg } from '../../model/lot.ts';
import type { Season } from '../../model/season.ts';
import { poundsFromKilograms } from '../../model/units.ts';
import { roundToAdd } from '../../ui/round-to-add.ts';
import { cardWords } from './card-words.ts';

/** Entries added up by account, in the order they first come, in whole units that add to their rounded sum. */
function wholeByAccount(entries: readonly MassEntry[], unitsInKg: number) {
  const sums = new Map<string, number>();
  for (const entry of entries) {
    const amount = (totalDryKg(entry.dryKg) + entry.waterKg) * unitsInKg;
    sums.set(entry.account, (sums.get(entry.account) ?? 0) + amount);
  }
  const total = Math.round([...sums.values()].reduce((sum, amount) => sum + amount, 0));
  const whole = roundToAdd(
    [...sums.values()].map((amount) => [amount]),
    [total],
    0,
  );
  const parts = [...sums.keys()].map((account, i) => ({ account, amount: whole[i]![0]! }));
  return { total, parts: parts.filter(({ amount }) => amount > 0).sort((a, b) => b.amount - a.amount) };
}

/** Where every pound of a season came from and went, in two sentences; none where nothing was harvested. */
export function cardLedger(season: Season, { messages, formats, language, unitSystem }: Words): string[] {
  if (season.ledgers.length === 0) return [];
  const words = cardWords(language);
  const whole = chainLedger(season.ledgers);
  const isUs = unitSystem === 'us';
  const unit = isUs ? messages.units.pounds : messages.units.kilograms;
  const unitsInKg = isUs ? poundsFromKilograms(1) : 1;
  const names: Readonly<Record<string, string>> = { ...messages.accounts.sources, ...messages.accounts.destinations };
  const written = (amount: number) => `${formats.count(amount)}\u00a0${unit.sign}`;
  const said = (entries: readonly MassEntry[]) => {
    const { total, parts } = wholeByAccount(entries, unitsInKg);
    const list = parts.map(({ account, amount }) => {
      const name = names[account] ?? account;
      return fill(words.item, {
        amount: formats.count(amount),
        name: name.charAt(0).toLocaleLowerCase() + name.slice(1),
      });
    });
    return { total: written(total), list: list.join(', ') };
  };
  const error = closingErrorRelative(whole);
  return [
    fill(words.closingIn, said(whole.in)),
    fill(words.closingOut, { ...said(whole.out), left: error === 0 ? formats.count(0) : formats.powerOfTen(error) }),
  ];
}
