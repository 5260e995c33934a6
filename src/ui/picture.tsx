export interface PictureProps {
  /** The drawing, as SVG text made by our own code. */
  readonly svg: string;
  /** What it shows; empty where words beside it already say so. */
  readonly alt: string;
  readonly class?: string;
}

/** A drawing with its text alternative. */
export function Picture({ svg, alt, class: name }: PictureProps) {
  const html = { __html: svg };
  const names = `picture ${name ?? ''}`;
  // The SVG comes from our own drawing code, never from a file or an address.
  return alt ? (
    <span class={names} role="img" aria-label={alt} dangerouslySetInnerHTML={html} />
  ) : (
    <span class={names} aria-hidden="true" dangerouslySetInnerHTML={html} />
  );
}
