import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

interface RowGroupProps {
  readonly className: string;
  readonly title: string;
  readonly open: boolean;
  readonly rows: () => ComponentChildren;
}

/** Rows under a heading, made when the group is opened: there are many hundreds, and most are never looked at. */
export function RowGroup({ className, title, open, rows }: RowGroupProps) {
  const [opened, setOpened] = useState(open);
  return (
    <details class={className} open={open} onToggle={(event) => setOpened(event.currentTarget.open)}>
      <summary>{title}</summary>
      {opened || open ? <ul>{rows()}</ul> : null}
    </details>
  );
}
