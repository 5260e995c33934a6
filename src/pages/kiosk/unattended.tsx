import { Component, type ComponentChildren } from 'preact';
import { keptSettings } from '../../kiosk/settings.ts';
import { type Unattended as Watch, watchUnattended } from '../../kiosk/unattended.ts';

/** Keeps what is within it going with nobody about: where a part fails, a quiet picture stands until the page is loaded anew. */
export class Unattended extends Component<
  { readonly product: string; readonly children: ComponentChildren },
  { broken: boolean }
> {
  override state = { broken: false };
  watch: Watch | null = null;

  override componentDidMount(): void {
    this.watch = watchUnattended(keptSettings(), this.props.product);
  }

  override componentDidCatch(): void {
    this.setState({ broken: true });
    this.watch ??= watchUnattended(keptSettings(), this.props.product);
    this.watch.onError();
  }

  override componentWillUnmount(): void {
    this.watch?.stop();
    this.watch = null;
  }

  override render() {
    return this.state.broken ? null : this.props.children;
  }
}
