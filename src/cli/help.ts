import { weaveIds } from '../model/cloth/weaves.ts';
import { decisionTable } from '../model/decisions.ts';
import { farms } from '../model/farms.ts';
import { clothNames } from '../model/trace/cloth-weights.ts';
import { countLimits } from '../model/trace/facts.ts';
import { projectIds } from '../model/trace/project-facts.ts';
import { startIds } from '../model/trace/trace-forward.ts';

const season = `season: one season from planter to sewing table
  --scenario NAME|FILE       ${farms.map(({ id }) => id).join(', ')}; or a JSON file
  --weather FILE.csv         a daily record with DATE, TMAX, TMIN, PRCP
  --weather-units us|metric  F and in, or C and mm; told from the values when left out
  --latitude DEG             of the weather; the file's LATITUDE column when left out, or the scenario's
  --year N                   which year of a file that holds several
  --seed N                   0 to 999999 (1)
  --units us|metric          for reading (us)
  --json | --csv             data instead of words; the csv holds the ledgers`;
const bale = `bale: grade and price one bale from its class card
  --length 1.12in --uniformity 82 --strength 30 --micronaire 4.2 --rd 76 --b 8.5 --leaf 3
  --kind upland|pima  --market ${decisionTable.classing.market.options.join('|')}  --net 480lb  --json
  bare numbers: inches, percent, g/tex, lb; lengths also in mm, strength in cN/tex, weight in kg`;
const cloth = `cloth: weight, cover and name of a woven cloth
  --warp 30Ne --weft 30Ne --ends 68/in --picks 68/in  --weave ${weaveIds.join('|')}
  --warp-crimp 6 --weft-crimp 7  --json
  yarns also 19.7tex, 50Nm, 40/2Ne; setts also 27/cm; bare numbers: Ne, per inch, percent`;
const trace = `trace: from a project back to the field, or from the field forward to cloth
  --project ${projectIds.join('|')}
  --count 1                  how many of it, to ${countLimits.high}
  or --yards 3 --width 44in --weight 4.3oz/yd2   (meters 3m, width in cm, weight in gsm, or a cloth:
     ${clothNames.join(', ')})
  or --from ${startIds.join('|')} --count 1   forward to cloth
  --scenario NAME|FILE --seed N   whose field and gin; --averages for the stated averages instead
  --json`;

const checks = `checks: the model against published figures and general tools, by kind, with its known misses
  --json                     the counts alone
  exit code 1 when a check fails`;

const texts: Readonly<Record<string, string>> = { season, bale, cloth, trace, checks };

/** Help for all commands. */
export const helpText = (): string =>
  `seamfield: cotton from the planter to the cutting table\n\n${Object.values(texts).join('\n\n')}`;

/** Help for one command. */
export const helpOf = (command: string): string => texts[command] ?? helpText();
