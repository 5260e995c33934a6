import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { type TraceCase, traceCases } from '../../model/trace/chain-averages.ts';
import type { TraceScene } from '../../scene/trace/trace-scene.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { savePng } from '../card/save-card.ts';
import type { Theme } from '../preferences.ts';
import { saveCsv } from '../sources/save-csv.ts';
import type { Traced } from './trace-of.ts';
import { traceRows } from './trace-rows.ts';
import type { TraceWords } from './use-trace-words.ts';

export interface KeepTraceProps {
  readonly traced: Traced;
  readonly said: TraceWords;
  readonly theme: Theme;
  /** The address that reopens the page. */
  readonly link: string;
  /** The picture at the size it is saved in. */
  readonly sceneOf: () => TraceScene;
}

/** Print, picture, numbers and link: all made on this device. */
export function KeepTrace({ traced, said, theme, link: address, sceneOf }: KeepTraceProps) {
  const { messages } = useWords();
  const [told, setTold] = useState('');
  const { actions } = said;
  const name = `${actions.file}-${traced.account.cases.middle.project ?? 'own'}`;
  const picture = () => {
    const { list, width, height } = sceneOf();
    return savePng(`${name}.png`, list, { width, height }, theme).then(
      () => setTold(''),
      () => setTold(actions.pictureFailed),
    );
  };
  const numbers = () => {
    const [first, ...heads] = actions.heads;
    const cases = (of: (at: TraceCase) => number) => traceCases.map((at) => of(at));
    saveCsv(`${name}.csv`, [
      [first!, ...heads],
      ...traceRows.map(({ key, unit, of }) => [
        said.figures[key],
        ...cases((at) => of(traced.account.cases[at])),
        unit,
      ]),
    ]);
  };
  const link = () =>
    navigator.clipboard.writeText(address).then(
      () => setTold(messages.common.shared),
      () => setTold(`${messages.common.shareFailed} ${address}`),
    );
  return (
    <section class="trace-keep" aria-label={actions.heading}>
      <div class="trace-actions">
        <PatchButton onPress={() => print()}>{actions.print}</PatchButton>
        <PatchButton onPress={picture}>{actions.png}</PatchButton>
        <PatchButton onPress={numbers}>{actions.csv}</PatchButton>
        <PatchButton onPress={link}>{actions.link}</PatchButton>
      </div>
      <p role="status" class="caption">
        {told}
      </p>
      <p class="trace-address">{address}</p>
    </section>
  );
}
