import { useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { encodeRun, type SavedRun } from '../../statechart/saved-run.ts';
import { weatherKey } from '../../statechart/weather-key.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import { hashOf } from '../route.ts';
import { farmWords } from './farm-words.ts';
import type { DraftHand } from './use-draft.ts';

/** The farm's run, and the address that opens it from anywhere. */
function linkOf({ draft, seed }: DraftHand) {
  const { scenario, weather } = draft;
  const run: SavedRun = weather ? { scenario, seed, weather: weatherKey(weather.year) } : { scenario, seed };
  const query = encodeRun(run);
  const hash = hashOf({ page: 'season', station: 'planting', query });
  return { query, hash, address: `${location.href.split('#')[0]}${hash}` };
}

/** On with the farm: run it, see its card, or copy the link, with what the link cannot hold said in words. */
export function FarmLink({ hand }: { readonly hand: DraftHand }) {
  const { formats, language } = useWords();
  const words = farmWords(language);
  const [copied, setCopied] = useState<'copied' | 'failed' | null>(null);
  const { query, hash, address } = linkOf(hand);
  const { scenario, weather, base } = hand.draft;
  const isNamed = JSON.stringify([scenario.name, scenario.story]) !== JSON.stringify([base.name, base.story]);
  // The season page finds the name and the record on the shelf.
  const go = (to: string) => {
    hand.keepNow();
    location.hash = to;
  };
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setCopied('copied'),
      () => setCopied('failed'),
    );
  return (
    <section class="farm-link" aria-label={words.run}>
      <PatchButton ink="madder" primary onPress={() => go(hash)}>
        {words.run}
      </PatchButton>
      <PatchButton onPress={() => go(hashOf({ page: 'card', query }))}>{words.card}</PatchButton>
      <PatchButton onPress={copy}>{words.copy}</PatchButton>
      <p class="caption">{fill(words.linkHolds, { n: formats.count(address.length) })}</p>
      {isNamed || weather ? (
        <>
          <p class="caption">{words.linkLacks}</p>
          <ul class="caption">
            {isNamed ? <li>{words.lacks.name}</li> : null}
            {weather ? <li>{words.lacks.weather}</li> : null}
          </ul>
        </>
      ) : null}
      <p role="status" class="caption">
        {copied === 'copied' ? words.copied : copied === 'failed' ? `${words.copyFailed} ${address}` : ''}
      </p>
    </section>
  );
}
