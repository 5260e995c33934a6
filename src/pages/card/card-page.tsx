import { useEffect, useMemo, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { runSeason } from '../../model/chain.ts';
import { cardSize, seasonCard } from '../../scene/card/season-card.ts';
import { paintSvg } from '../../scene/paint-svg.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { OneWorkingOpen } from '../../ui/open-working.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { Picture } from '../../ui/picture.tsx';
import { ElsewhereNotes } from '../farm/elsewhere-notes.tsx';
import { openRun } from '../farm/open-run.ts';
import type { Theme } from '../preferences.ts';
import { hashOf } from '../route.ts';
import { cardContent } from './card-content.ts';
import { CardTable } from './card-table.tsx';
import { cardWords } from './card-words.ts';
import { ChosenList } from './chosen-list.tsx';
import { savePng } from './save-card.ts';
import '../season/workings.css';
import './card.css';

export interface CardPageProps {
  /** The query of the season's link. */
  readonly query: string;
  readonly theme: Theme;
}

/** A season on one page, to print or to save, with its words beside it. */
export default function CardPage({ query, theme }: CardPageProps) {
  const all = useWords();
  const { messages, language } = all;
  const words = cardWords(language);
  const opened = useMemo(() => openRun(query), [query]);
  const { run, weather } = opened;
  const season = useMemo(() => runSeason(run.scenario, run.seed, weather?.year ?? null), [run, weather]);
  const hash = hashOf({ page: 'season', station: 'sewing', query: encodeRun(run) });
  const link = `${location.href.split('#')[0]}${hash}`;
  const card = useMemo(() => cardContent(season, weather?.name ?? null, link, all), [season, weather, link, all]);
  const marks = useMemo(() => seasonCard(card), [card]);
  const svg = useMemo(() => paintSvg(marks, { ...cardSize, theme }), [marks, theme]);
  const [isFailed, setFailed] = useState(false);
  const { product } = messages.common;
  useEffect(() => {
    document.title = `${words.title}: ${product}`;
  }, [words, product]);
  const save = () =>
    savePng(`${run.scenario.id}-${run.seed}.png`, marks, cardSize, theme).then(
      () => setFailed(false),
      () => setFailed(true),
    );
  return (
    <OneWorkingOpen>
      <main id="main" class="card-page" tabIndex={-1}>
        <div class="card-head">
          <h1>{words.title}</h1>
          <ElsewhereNotes opened={opened} />
          <div class="card-actions">
            <PatchButton ink="madder" primary onPress={() => print()}>
              {words.print}
            </PatchButton>
            <PatchButton onPress={save}>{words.savePicture}</PatchButton>
          </div>
          <p role="status" class="caption">
            {isFailed ? words.pictureFailed : ''}
          </p>
          <p>
            <a href={hash}>{words.back}</a>
          </p>
          <p>
            <a href={hashOf({ page: 'farm', query: encodeRun(run) })}>{words.changeFarm}</a>
          </p>
        </div>
        <figure class="card-sheet">
          <Picture svg={svg} alt={fill(words.alt, { headline: card.headline })} />
        </figure>
        <section class="card-words" aria-label={words.inWords}>
          <h2>{words.inWords}</h2>
          <p class="card-headline">{card.headline}</p>
          <p>
            <b>{card.name}</b>. {card.kind}. {card.setting}
          </p>
          <ChosenList scenario={season.scenario} />
          <CardTable season={season} />
          {season.payments ? <p>{words.paidMeans}</p> : null}
          {card.closing.map((line) => (
            <p key={line}>{line}</p>
          ))}
          <p>
            {card.linkWords} <a href={hash}>{card.link}</a>
          </p>
        </section>
      </main>
    </OneWorkingOpen>
  );
}
