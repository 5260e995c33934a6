import { accounts, ledger, partHelp, parts } from './en/accounts.ts';
import { climates, eras } from './en/climates.ts';
import { cloth } from './en/cloth.ts';
import { common } from './en/common.ts';
import { decisions } from './en/decisions.ts';
import { fibre } from './en/fibre.ts';
import { cautions, limits, marks } from './en/marks.ts';
import { navigation } from './en/navigation.ts';
import { practice } from './en/practice.ts';
import { problems } from './en/problems.ts';
import { readings } from './en/readings.ts';
import { scenes } from './en/scenes.ts';
import { stations } from './en/stations.ts';
import { units } from './en/units.ts';
import { verdicts } from './en/verdicts.ts';
import { workings } from './en/workings.ts';

/** Every word on screen, in American English: the source of truth for the other languages. */
export const en = {
  common,
  navigation,
  stations,
  decisions,
  parts,
  partHelp,
  accounts,
  ledger,
  fibre,
  cloth,
  readings,
  scenes,
  verdicts,
  marks,
  limits,
  cautions,
  practice,
  problems,
  climates,
  eras,
  units,
  workings,
};
export type Messages = typeof en;
