export interface AnnouncerProps {
  /** The last thing that happened, in a sentence; empty at first. Only events belong here, never running numbers. */
  readonly message: string;
}

/** Says an event to those who listen instead of look, when they pause. */
export const Announcer = ({ message }: AnnouncerProps) => (
  <p class="unseen" role="status" aria-live="polite">
    {message}
  </p>
);
