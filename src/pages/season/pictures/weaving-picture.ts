import { fill } from '../../../language/fill.ts';
import type { Words } from '../../../language/words.ts';
import type { Cloth } from '../../../model/cloth/cloth.ts';
import { yarnDiameterMm } from '../../../model/cloth/diameter.ts';
import { weaveOf } from '../../../model/cloth/weaves.ts';
import { millSpeeds } from '../../../model/mill/speed-facts.ts';
import type { Season } from '../../../model/season.ts';
import { MM_PER_INCH } from '../../../model/units.ts';
import type { InAccount, OutAccount } from '../../../scene/stations/flow/flow-input.ts';
import { slowed } from '../../../scene/stations/slowed.ts';
import type { Sett, ShownCloth, WeavingScene } from '../../../scene/stations/weaving/weaving-input.ts';
import { weavingLegend, weavingScene } from '../../../scene/stations/weaving/weaving-scene.ts';
import { above, atStation, exact, percent, step } from '../../../workings/steps.ts';
import type { Origin, Printed, Step } from '../../../workings/working.ts';
import { printed } from '../printed.ts';
import type { PictureMoment, PictureSize, StationPicture, TwinRow } from './picture.ts';
import { type PictureLedger, pictureLedger } from './picture-ledger.ts';
import { drawnStep, factStep, said } from './row-steps.ts';
import { inchFraction } from './spinning-picture.ts';
import { type WeavingWords, weavingWords } from './weaving-words.ts';

const mmPerCm = 10;
/** Divisions of an inch on the ruler under the cloth. */
const rulerDivisions = 16;
/** Any size: what pieces stand for does not hang on it. */
const anySize: PictureSize = { width: 808, height: 388 };

/** Life size on a screen, as style sheets reckon it. */
const pixelsPerInch = 96;

interface Told {
  readonly season: Season;
  readonly words: Words;
  readonly own: WeavingWords;
  readonly ledger: PictureLedger;
  readonly cloth: ShownCloth | null;
  readonly knit: boolean;
}

/** A cloth before its finish: what the finish drew in is let out again. */
function settsOf({
  description,
  finishShrinkPercent: { length, width },
}: Cloth): Pick<ShownCloth, 'onLoom' | 'finished'> {
  const finished: Sett =
    description.kind === 'woven'
      ? { across: description.construction.endsPerInch, along: description.construction.picksPerInch }
      : { across: description.walesPerInch, along: description.coursesPerInch };
  return {
    finished,
    onLoom: { across: finished.across * (1 - width / 100), along: finished.along * (1 - length / 100) },
  };
}

function toldOf(season: Season, words: Words): Told | null {
  const ledger = pictureLedger(season, 'weaving', words);
  const { weaving, spinning, scenario } = season;
  if (!ledger || !weaving || !spinning?.yarn || !ledger.inflow.has('lot')) return null;
  const { structure } = scenario.decisions.weaving;
  const made = weaving.cloth;
  return {
    season,
    words,
    own: weavingWords(words.language),
    ledger,
    knit: structure === 'jersey',
    cloth: made && {
      structure,
      finish: made.finish,
      ...settsOf(made),
      yarnMm: yarnDiameterMm(spinning.yarn.tex),
      shrink: made.finishShrinkPercent,
    },
  };
}

/** Threads of an inch in the reader's unit, whole where they are whole. */
function settValue(perInch: number, { unitSystem }: Words): Exclude<Printed, { as: 'exact' }> {
  const value = unitSystem === 'us' ? perInch : (perInch * mmPerCm) / MM_PER_INCH;
  return { as: 'number', value, decimals: Math.abs(value - Math.round(value)) < 1e-6 ? 0 : 1 };
}

/** A sett in the reader's unit: two numbers and the unit. */
function settWords({ across, along }: Sett, words: Words) {
  const each = (perInch: number) => printed(settValue(perInch, words), words);
  return {
    ends: each(across),
    picks: each(along),
    unit: words.messages.units[words.unitSystem === 'us' ? 'threadsPerInch' : 'threadsPerCentimetre'].sign,
  };
}

const shrunkText = ({ cloth, own, words: { formats } }: Told): string =>
  cloth
    ? fill(own.shrunk, {
        length: formats.percent(cloth.shrink.length, 0),
        width: formats.percent(cloth.shrink.width, 0),
      })
    : '';

const speedOf = ({ season, knit }: Told): number => {
  const speeds = millSpeeds[season.scenario.era === 'thirties' ? 'thirties' : 'present'];
  return (knit ? speeds.knitting : speeds.loom).value;
};

const showsText = (told: Told, what: 'shafts' | 'reed' | 'knitting'): string => {
  const perMinute = speedOf(told);
  const { count } = told.words.formats;
  const { times } = slowed(perMinute);
  return fill(told.own.shows[what === 'knitting' && times === 1 ? 'knittingTrue' : what], {
    picks: count(perMinute),
    turns: count(perMinute),
    times: count(times),
  });
};

/** Why the cloth cannot be woven, and what this yarn allows. */
function stoppedText({ season, own, words }: Told): string {
  const stopped = season.weaving?.stopped;
  if (!stopped) return '';
  const { ends, unit } = settWords({ across: stopped.maximumSettPerInch, along: 0 }, words);
  return fill(own.stopped, { most: fill(own.most, { n: ends, unit }) });
}

const nameIn = (account: InAccount, own: WeavingWords): string =>
  (own.in as Readonly<Partial<Record<InAccount, string>>>)[account] ?? '{mass}';
const nameOut = (account: OutAccount, own: WeavingWords): string =>
  (own.out as Readonly<Partial<Record<OutAccount, string>>>)[account] ?? '{mass}';

/** What is done to the cloth off the loom; nothing for cloth that stays grey. */
const bathOf = ({ cloth, own }: Told): string => (cloth && cloth.finish !== 'grey' ? own.baths[cloth.finish] : '');

function sceneOf(told: Told, size: PictureSize): WeavingScene {
  const { season, words, own, ledger, cloth, knit } = told;
  const { formats, messages, unitSystem } = words;
  const { structure } = season.scenario.decisions.weaving;
  const us = unitSystem === 'us';
  const long = size.width > 700;
  const onLoom = cloth ? settWords(cloth.onLoom, words) : null;
  const finished = cloth ? settWords(cloth.finished, words) : null;
  return {
    size,
    unitKg: ledger.unitKg,
    knit,
    shafts: structure === 'jersey' ? 0 : weaveOf(structure).repeat,
    perMinute: speedOf(told),
    cloth,
    inflow: [...ledger.inflow].map(([account, masses]) => ({ account, masses })),
    outflow: [...ledger.outflow].map(([account, masses]) => ({ account, masses })),
    rulerTickMm: us ? MM_PER_INCH / rulerDivisions : 1,
    labels: {
      in: (account) =>
        fill(account === 'warpSize' && size.width <= 500 ? own.sizeShort : nameIn(account, own), {
          mass: ledger.massIn(account),
        }),
      out: (account, progress) => fill(nameOut(account, own), { mass: ledger.massOut(account, progress) }),
      names: own.names,
      bath: bathOf(told),
      onLoom: onLoom
        ? fill(long ? (knit ? own.offMachine : own.onLoom) : knit ? own.offMachineShort : own.onLoomShort, onLoom)
        : '',
      finished: finished ? fill(long ? (knit ? own.finishedKnit : own.finished) : own.finishedShort, finished) : '',
      shrunk: shrunkText(told),
      stopped: stoppedText(told),
      rulerMark: (mm) => {
        if (mm === 0) return '0';
        return us
          ? `${inchFraction(Math.round((mm / MM_PER_INCH) * rulerDivisions), rulerDivisions)}\u00a0${messages.units.inches.sign}`
          : `${formats.number(mm, 0)}\u00a0${messages.units.millimetres.sign}`;
      },
      shows: (what) => showsText(told, what),
      caption: ({ pieceKg, bitKg, times, magnified }) =>
        fill(cloth ? (long ? (times === 1 ? own.captionTrue : own.caption) : own.captionShort) : own.captionStopped, {
          piece: formats.mass(pieceKg, 0).text,
          bit: formats.mass(bitKg, 1).text,
          times: formats.count(times),
          magnified: formats.count(magnified),
        }),
    },
  };
}

/** Threads across and along as the picture writes them. */
function threadSteps(label: string, { across, along }: Sett, words: Words, from: Origin): Step[] {
  return [across, along].map((perInch) => said(label, settValue(perInch, words), from));
}

/** Finished threads, and how the finish let out gives those on the loom. */
function settSteps({ own, words, knit }: Told, cloth: ShownCloth, of: 'onLoom' | 'finished'): Step[] {
  const finished = threadSteps(own.rows.finished, cloth.finished, words, atStation('weaving'));
  if (of === 'finished') return finished;
  return [
    ...finished,
    step('shrinkLength', percent(cloth.shrink.length), atStation('weaving')),
    step('shrinkWidth', percent(cloth.shrink.width), atStation('weaving')),
    ...threadSteps(own.rows[knit ? 'onMachine' : 'onLoom'], cloth.onLoom, words, above),
  ];
}

const shrunkSteps = ({ shrink }: ShownCloth): Step[] => [
  step('shrinkLength', percent(shrink.length, 0), atStation('weaving')),
  step('shrinkWidth', percent(shrink.width, 0), atStation('weaving')),
];

/** Picks or turns a minute. */
function speedStep({ own, season, knit }: Told): Step {
  const speeds = millSpeeds[season.scenario.era === 'thirties' ? 'thirties' : 'present'];
  const fact = knit ? speeds.knitting : speeds.loom;
  return factStep(own.rows[knit ? 'turns' : 'picks'], { as: 'count', value: fact.value }, fact);
}

/** The scene of a season: null where nothing came to the loom. */
export function weavingInput(season: Season, words: Words, size: PictureSize): WeavingScene | null {
  const told = toldOf(season, words);
  return told && sceneOf(told, size);
}

/** The mill that makes cloth: a loom or a knitting machine, the finish, and the cloth thread by thread. */
export const weavingPicture: StationPicture = {
  layOut(season, words, size) {
    const input = weavingInput(season, words, size);
    if (!input) return () => null;
    const frameAt = weavingScene(input);
    return ({ progress }: PictureMoment) => frameAt(progress);
  },
  see(season, words, { progress }) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { own, cloth, knit, ledger } = told;
    const { formats, messages } = words;
    if (!cloth) return [stoppedText(told)];
    const { structure, finish } = season.scenario.decisions.weaving;
    const { options } = messages.decisions.weaving.structure;
    const lower = (text: string) => text.charAt(0).toLocaleLowerCase() + text.slice(1);
    return [
      fill(knit ? own.seeKnit : own.see, { structure: lower(options[structure]), ...settWords(cloth.onLoom, words) }),
      ...(ledger.inflow.has('warpSize') && finish !== 'grey'
        ? [fill(own.seeSize, { size: ledger.massIn('warpSize') })]
        : []),
      finish === 'grey'
        ? own.seeGrey
        : fill(own.seeFinish, {
            finish: lower(messages.decisions.weaving.finish.options[finish]),
            shrunk: shrunkText(told),
            ...settWords(cloth.finished, words),
          }),
      own.seeLarge,
      ...(finish === 'grey' ? [] : [own.seeOutline]),
      fill(own.soFar, { done: formats.percent(100 * progress, 0), cloth: ledger.massOut('lot', progress) }),
      `${showsText(told, knit ? 'knitting' : 'reed')}.`,
    ];
  },
  rows(season, words, { progress }) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { own, cloth, knit, ledger } = told;
    const { formats, messages } = words;
    const share = cloth ? progress : 1;
    const legend = weavingLegend(sceneOf(told, anySize));
    const row = (key: keyof typeof own.rows, text: string, steps: readonly Step[]): TwinRow => ({
      key,
      label: own.rows[key],
      text,
      steps,
    });
    const sett = (each: Sett) => {
      const { ends, picks, unit } = settWords(each, words);
      return `${ends} × ${picks} ${unit}`;
    };
    const bare = (name: string) => fill(name, { mass: '' }).trim();
    return [
      ...(cloth
        ? [
            row(knit ? 'onMachine' : 'onLoom', sett(cloth.onLoom), settSteps(told, cloth, 'onLoom')),
            row('finished', sett(cloth.finished), settSteps(told, cloth, 'finished')),
            row('shrunk', shrunkText(told), shrunkSteps(cloth)),
            row('yarn', `${formats.number(cloth.yarnMm, 2)}\u00a0${messages.units.millimetres.sign}`, [
              step('yarnTex', exact(season.spinning!.yarn!.tex, 'tex'), atStation('spinning')),
              said(own.rows.yarn, { as: 'number', value: cloth.yarnMm, decimals: 2 }, atStation('weaving')),
            ]),
            row(knit ? 'turns' : 'picks', formats.count(speedOf(told)), [speedStep(told)]),
            row('slower', formats.count(slowed(speedOf(told)).times), [
              drawnStep(own.rows.slower, { as: 'count', value: slowed(speedOf(told)).times }),
            ]),
          ]
        : []),
      ...[...ledger.inflow.keys()].map(
        (account): TwinRow => ({
          key: `in/${account}`,
          label: fill(own.rows.in, { name: bare(nameIn(account, own)) }),
          text: ledger.massIn(account),
          steps: ledger.steps('in', account),
        }),
      ),
      ...[...ledger.outflow.keys()].map(
        (account): TwinRow => ({
          key: `out/${account}`,
          label: fill(own.rows.so, { name: bare(nameOut(account, own)) }),
          text: ledger.massOut(account, share),
          steps: ledger.steps('out', account, share),
        }),
      ),
      row('piece', formats.mass(legend.tuftKg, 0).text, [
        drawnStep(own.rows.piece, { as: 'mass', value: legend.tuftKg, decimals: 0 }),
      ]),
      row('bit', formats.mass(legend.bitKg, 1).text, [
        drawnStep(own.rows.bit, { as: 'mass', value: legend.bitKg, decimals: 1 }),
      ]),
    ];
  },
  said(season, words) {
    const told = toldOf(season, words);
    if (!told) return [];
    const { own, cloth, knit } = told;
    const value = (key: string, label: string, text: string, steps: readonly Step[]): TwinRow => ({
      key,
      label,
      text,
      steps,
    });
    const stopped = season.weaving?.stopped;
    if (stopped) {
      const most = settWords({ across: stopped.maximumSettPerInch, along: 0 }, words).ends;
      return [
        value('most', own.rows.onLoom, most, [
          said(own.rows.onLoom, settValue(stopped.maximumSettPerInch, words), atStation('weaving')),
        ]),
      ];
    }
    if (!cloth) return [];
    return [
      ...(['onLoom', 'finished'] as const).flatMap((of) => {
        const { ends, picks } = settWords(cloth[of], words);
        const label = own.rows[of === 'onLoom' && knit ? 'onMachine' : of];
        const steps = settSteps(told, cloth, of);
        return [value(`${of}/across`, label, ends, steps), value(`${of}/along`, label, picks, steps)];
      }),
      value('pixels', own.rows.scale, '96', [drawnStep(own.rows.scale, { as: 'count', value: pixelsPerInch })]),
    ];
  },
};
