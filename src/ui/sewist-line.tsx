import { useId } from 'preact/hooks';
import { useWords } from '../language/words.ts';
import type { StationId } from '../model/station.ts';

/** Why someone who sews cares about a station, in the display face. */
export function SewistLine({ station }: { readonly station: StationId }) {
  const { messages } = useWords();
  const id = useId();
  return (
    <section class="sewist-line" aria-labelledby={id}>
      <h2 id={id} class="caption">
        {messages.common.atYourTable}
      </h2>
      <p>{messages.stations[station].atTheTable}</p>
    </section>
  );
}
