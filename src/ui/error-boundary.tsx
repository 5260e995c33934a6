import { Component, type ComponentChildren } from 'preact';
import { useWords } from '../language/words.ts';
import { PatchButton } from './patch-button.tsx';

export interface ErrorBoundaryProps {
  readonly children: ComponentChildren;
  /** Told of the error, for a log or a count. */
  readonly onError?: (error: unknown) => void;
}

/** Keeps a fault in one part from blanking the page: says so in its place and offers to draw the part again. */
export class ErrorBoundary extends Component<ErrorBoundaryProps, { broken: boolean }> {
  override state = { broken: false };

  override componentDidCatch(error: unknown): void {
    this.setState({ broken: true });
    this.props.onError?.(error);
  }

  override render() {
    return this.state.broken ? <Broken onRetry={() => this.setState({ broken: false })} /> : this.props.children;
  }
}

function Broken({ onRetry }: { readonly onRetry: () => void }) {
  const { common } = useWords().messages;
  return (
    <section class="patch problem-list" data-state="basted" data-cut="3" role="alert">
      <h3>{common.errorHeading}</h3>
      <p>{common.errorText}</p>
      <PatchButton onPress={onRetry}>{common.errorRetry}</PatchButton>
    </section>
  );
}
