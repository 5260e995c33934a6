import type { Messages } from './en.ts';
import { accounts, ledger, partHelp, parts } from './es/accounts.ts';
import { climates, eras } from './es/climates.ts';
import { cloth } from './es/cloth.ts';
import { common } from './es/common.ts';
import { decisions } from './es/decisions.ts';
import { fibre } from './es/fibre.ts';
import { cautions, limits, marks } from './es/marks.ts';
import { navigation } from './es/navigation.ts';
import { practice } from './es/practice.ts';
import { problems } from './es/problems.ts';
import { readings } from './es/readings.ts';
import { scenes } from './es/scenes.ts';
import { stations } from './es/stations.ts';
import { units } from './es/units.ts';
import { verdicts } from './es/verdicts.ts';
import { workings } from './es/workings.ts';

/** Every word on screen in Spanish, for readers in the United States and Mexico first. */
export const es: Messages = {
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
