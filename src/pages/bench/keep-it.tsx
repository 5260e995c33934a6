import { csvFormatRows } from 'd3-dsv';
import { useState } from 'preact/hooks';
import { useWords } from '../../language/words.ts';
import { benchSides } from '../../statechart/saved-bench.ts';
import { PatchButton } from '../../ui/patch-button.tsx';
import type { AllReadings } from '../../workings/bench/all-readings.ts';
import { saveFile } from '../save-file.ts';
import { readingName, readingText } from './bench-source.ts';
import { benchWords } from './bench-words.ts';
import type { BothViews } from './difference-lines.tsx';

const parts: readonly (keyof AllReadings)[] = ['fibre', 'yarn', 'weft', 'cloth'];

/** Prints both benches, saves their numbers, copies their link. */
export function KeepIt({ view, link }: { readonly view: BothViews; readonly link: string }) {
  const words = useWords();
  const said = benchWords(words.language);
  const [isCopied, setCopied] = useState(false);
  const rows = benchSides.flatMap((side) =>
    parts.flatMap((part) =>
      view[side].readings[part].map((reading) => [
        said.sides[side],
        part === 'weft' ? said.yarn.weft : said.parts[part],
        readingName(reading, words, said),
        readingText(reading, words, said),
        reading.rests?.mark ?? '',
      ]),
    ),
  );
  return (
    <section class="bench-keep no-print" aria-labelledby="bench-keep">
      <h2 id="bench-keep">{said.save.heading}</h2>
      <PatchButton ink="madder" onPress={() => print()}>
        {said.save.print}
      </PatchButton>
      <PatchButton
        onPress={() => saveFile('bench.csv', new Blob([`\ufeff${csvFormatRows(rows)}\n`], { type: 'text/csv' }))}
      >
        {said.save.csv}
      </PatchButton>
      <PatchButton
        onPress={() => {
          void navigator.clipboard?.writeText(link).then(() => setCopied(true));
        }}
      >
        {said.save.link}
      </PatchButton>
      <p role="status" class="caption">
        {isCopied ? said.save.copied : said.save.invented}
      </p>
    </section>
  );
}
