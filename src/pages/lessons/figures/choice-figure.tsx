import { ChoiceRow, type ChoiceRowProps } from '../../../ui/choice-row.tsx';
import { DrawnPicture, type DrawnPictureProps } from './drawn-picture.tsx';
import { FigureFrame } from './figure-frame.tsx';
import { NumberTable, type NumberTableProps } from './number-table.tsx';

export interface ChoiceFigureProps<Value extends string | number>
  extends NumberTableProps,
    Pick<ChoiceRowProps<Value>, 'options' | 'value' | 'onChoose'>,
    Pick<DrawnPictureProps, 'draw' | 'widest'> {
  readonly text: { readonly title: string; readonly pick: string; readonly note: string };
  /** What the picture shows now, in a sentence. */
  readonly says: string;
}

/** A figure of which one thing is chosen: its row of choices, a drawn picture, and the same in numbers. */
export function ChoiceFigure<Value extends string | number>(props: ChoiceFigureProps<Value>) {
  const { text, says, options, value, onChoose, draw, widest, head, rows } = props;
  return (
    <FigureFrame
      title={text.title}
      says={says}
      note={text.note}
      controls={<ChoiceRow label={text.pick} options={options} value={value} onChoose={onChoose} />}
      picture={<DrawnPicture alt={says} draw={draw} {...(widest === undefined ? {} : { widest })} />}
      table={<NumberTable head={head} rows={rows} />}
    />
  );
}
