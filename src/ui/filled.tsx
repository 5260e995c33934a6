import { type ComponentChildren, Fragment } from 'preact';

/** A template with parts of the page in the places of its names: 'From {low} to {high}'. */
export const Filled = ({
  template,
  parts,
}: {
  readonly template: string;
  readonly parts: Readonly<Record<string, ComponentChildren>>;
}) => (
  <Fragment>
    {template.split(/\{(\w+)\}/).map((piece, i) => (i % 2 === 1 ? <Fragment key={i}>{parts[piece]}</Fragment> : piece))}
  </Fragment>
);
