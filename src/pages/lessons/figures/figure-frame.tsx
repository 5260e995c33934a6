import type { ComponentChildren } from 'preact';
import { useLesson } from '../lesson-frame.ts';

export interface FigureFrameProps {
  readonly title: string;
  /** What the picture shows now, in a sentence. */
  readonly says: string;
  readonly picture: ComponentChildren;
  /** What can be set; left out where there are no scripts. */
  readonly controls?: ComponentChildren;
  /** Rows of the table that says the same as the picture, with a head. */
  readonly table: ComponentChildren;
  readonly note?: string;
}

/** A figure of a lesson: picture, what it shows in words, and the same in numbers. */
export function FigureFrame({ title, says, picture, controls, table, note }: FigureFrameProps) {
  const { words, still } = useLesson();
  const numbers = (
    <div class="figure-table">
      <table>
        <caption class="unseen">{title}</caption>
        {table}
      </table>
      {note ? <p class="caption">{note}</p> : null}
    </div>
  );
  return (
    <figure class="lesson-figure">
      <figcaption aria-live={still ? undefined : 'polite'}>
        <b>{title}.</b> {says}
      </figcaption>
      {still ? null : controls}
      {picture}
      {still ? (
        numbers
      ) : (
        <details class="twin-table">
          <summary>{words.figures.table}</summary>
          {numbers}
        </details>
      )}
    </figure>
  );
}
