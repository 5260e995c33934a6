/** The pin that marks a thing as still being decided. A picture only: the state is said in words beside it. */
export const Pin = () => (
  <svg class="pin" viewBox="0 0 22 22" aria-hidden="true">
    <path d="M2 20 13 9" stroke="var(--iron)" stroke-width="1.6" stroke-linecap="round" />
    <path d="M11 7.5 14.5 4l4.2 1.2 1 4L16 12.6l-4-1z" fill="var(--madder)" stroke="var(--ink)" stroke-width="1" />
  </svg>
);
