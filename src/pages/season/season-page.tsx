import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import type { Season } from '../../model/season.ts';
import { stationIds } from '../../model/station.ts';
import { stationSpan } from '../../model/timeline.ts';
import { encodeRun } from '../../statechart/saved-run.ts';
import { speeds } from '../../statechart/season-machine.ts';
import { weatherKey } from '../../statechart/weather-key.ts';
import { Announcer } from '../../ui/announcer.tsx';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { InTurn } from '../../ui/in-turn.tsx';
import { OneWorkingOpen, useWorkingClosesOn } from '../../ui/open-working.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { SewistLine } from '../../ui/sewist-line.tsx';
import { Steady } from '../../ui/steady.tsx';
import { Twin } from '../../ui/twin.tsx';
import { useNarrow } from '../../ui/use-narrow.ts';
import { WhatChanged } from '../../ui/what-changed.tsx';
import { ElsewhereNotes } from '../farm/elsewhere-notes.tsx';
import { type OpenedRun, openRun } from '../farm/open-run.ts';
import { rememberSeason } from '../last-run.ts';
import type { Preferences } from '../preferences.ts';
import { hashOf, type Route } from '../route.ts';
import { sewnBefore, useAddress } from '../use-address.ts';
import { useSelector } from '../use-selector.ts';
import { useSinglePress } from '../use-single-press.ts';
import { AlwaysClosing } from './always-closing.tsx';
import { BalesPanel } from './bales-panel.tsx';
import { CarePanel } from './care-panel.tsx';
import { DecisionsPanel } from './decisions-panel.tsx';
import { DoubtPanel } from './doubt-panel.tsx';
import { ChoiceResult, DownstreamLine, useDownstream } from './downstream-line.tsx';
import { FarmBar } from './farm-bar.tsx';
import { FibrePanel } from './fibre-panel.tsx';
import { FinishedQuilt } from './finished-quilt.tsx';
import { LedgerPanel } from './ledger-panel.tsx';
import { LiveScene, LiveTimeBar, pictureMoment, usePanelMoment } from './live-moment.tsx';
import { MoneyPanel } from './money-panel.tsx';
import { saidValues } from './pictures/said-values.ts';
import { stationPictures } from './pictures/station-pictures.ts';
import { PracticePanel } from './practice-panel.tsx';
import { PredictCover, PredictCovered, tellingPictures } from './predict-cover.tsx';
import { PredictPanel } from './predict-panel.tsx';
import { PredictSwitch } from './predict-switch.tsx';
import { QuiltMap } from './quilt-map.tsx';
import { refusalText, stopText } from './refusal-text.ts';
import { openSession, type Session } from './season-session.ts';
import { SeedPanel } from './seed-panel.tsx';
import { SeenLines } from './seen-lines.tsx';
import { SeenTable } from './seen-table.tsx';
import { stationChanges } from './station-readings.ts';
import { UndoChoice } from './undo-choice.tsx';
import { usePredict } from './use-predict.ts';
import './season.css';
import './season-layout.css';
import './workings.css';

export interface SeasonPageProps {
  readonly route: Extract<Route, { page: 'season' }>;
  readonly preferences: Preferences;
}

const whole = <Snapshot,>(snapshot: Snapshot) => snapshot;

/** The main job: one season, station by station. */
export default function SeasonPage({ route, preferences }: SeasonPageProps) {
  const opened = useMemo(() => openRun(route.query), []);
  const session = useMemo(() => openSession(opened.run, route.station, sewnBefore(), opened.weather), [opened]);
  useEffect(() => session.close, [session]);
  return (
    <OneWorkingOpen>
      <SeasonView session={session} route={route} preferences={preferences} opened={opened} />
    </OneWorkingOpen>
  );
}

interface SeasonViewProps extends SeasonPageProps {
  readonly session: Session;
  readonly opened: OpenedRun;
}

function SeasonView({ session, route, preferences, opened }: SeasonViewProps) {
  const words = useWords();
  const { messages, formats } = words;
  const snapshot = useSelector(session.actor, whole);
  const moment = usePanelMoment(session);
  // What the numbers were before the choice now being turned: a slider's many small steps count as one choice.
  const [before, setBefore] = useState<{ readonly key: string; readonly season: Season } | null>(null);
  const { scenario, seed, station, sewn, refusal, speed, taken } = snapshot.context;
  const season = session.seasonOf(scenario, seed);
  const index = stationIds.indexOf(station);
  const span = stationSpan(season, station);
  useWorkingClosesOn(station);
  const shown = pictureMoment(moment, station, span);
  const { dayOfYear } = shown;
  // The mill and the sewing table come when somebody orders: the model gives them no day.
  const dated = index <= stationIds.indexOf('classing');
  const name = messages.stations[station].name;
  const { ribbon } = messages.scenes;
  const speedNames = index <= stationIds.indexOf('boll') ? ribbon.speeds : ribbon.workSpeeds;
  const send = session.actor.send;
  const narrow = useNarrow('(max-width: 56rem)');
  const map = (
    <QuiltMap
      station={station}
      sewn={sewn}
      theme={preferences.theme}
      onGo={(id) => send({ type: 'GO_TO', station: id })}
    />
  );

  /** What lies below a station's picture and choices comes after them. */
  const below = `${preferences.theme} ${station}`;

  const finished = snapshot.value === 'finished';
  const predict = usePredict({
    season,
    station,
    linked: opened.run.predict === true,
    over: finished,
    onHold: () => {
      send({ type: 'PAUSE' });
      session.runner.seek(0);
    },
    onGo: () => send({ type: 'PLAY' }),
  });
  const { asking } = predict;

  const query = encodeRun({ ...session.runOf(scenario, seed), ...(predict.on ? { predict: true as const } : {}) });
  useAddress({ page: 'season', station, query }, sewn);
  useEffect(() => {
    const run = encodeRun(session.runOf(scenario, seed));
    rememberSeason({ run, hash: hashOf({ page: 'season', station, query }), sewn });
  }, [session, scenario, seed, station, query, sewn]);
  // A link inside the page to another station asks the season to go there, as far as it may.
  useEffect(() => {
    if (route.station !== session.actor.getSnapshot().context.station) session.goTowards(route.station);
  }, [route, session]);

  const decide = (key: string, value: number | string | boolean) => {
    const turned = `${station}/${key}`;
    setBefore((last) => (last?.key === turned ? last : { key: turned, season }));
    send({ type: 'DECIDE', station, key, value });
  };
  const undo = () => {
    setBefore(null);
    send({ type: 'UNDO' });
  };
  // Another farm or another year is no change of a choice.
  const sameYear =
    before?.season.scenario.id === scenario.id && weatherKey(before.season.weather) === weatherKey(season.weather);
  const last = before && sameYear ? before.season : null;
  const downstream = useDownstream(last, season);
  const sewIn = useSinglePress(
    () => send({ type: 'SEW_IN' }),
    () => session.actor.getSnapshot().context.station,
  );
  const see = stationPictures[station].see(season, words, shown);
  const rows = stationPictures[station].rows(season, words, shown);
  const changes = stationChanges(season, last, station, words);
  const refused = refusal ? refusalText(refusal, words) : '';
  const stopped = season.stopped && stationIds.indexOf(season.stopped.station) <= index ? stopText(season, words) : '';
  const next = stationIds[index + 1];
  const thenTo = next ? fill(messages.navigation.thenTo, { name: messages.stations[next].name }) : null;
  // Another station begins at its picture, and so does the finished quilt, however far down the last one was read.
  const arrived = useRef(false);
  useEffect(() => {
    if (arrived.current) window.scrollTo(0, 0);
    arrived.current = true;
  }, [station, finished]);
  // Whoever came through a door finds the focus at the page, not nowhere.
  useEffect(() => {
    if (document.activeElement === document.body) document.getElementById('main')?.focus({ preventScroll: true });
  }, []);
  const { product } = messages.common;
  useEffect(() => {
    document.title = `${name}: ${product}`;
  }, [name, product]);

  return (
    <main id="main" class="season" tabIndex={-1} data-station={station}>
      <div class="season-head">
        <h1>{name}</h1>
        <p>
          {fill(messages.navigation.stationOf, {
            number: formats.count(index + 1),
            all: formats.count(stationIds.length),
          })}
          {dated ? `, ${formats.day(((dayOfYear - 1) % 365) + 1)}` : ''}
          <br />
          {scenario.name[words.language]}
          <AlwaysClosing season={season} station={station} />
        </p>
        {narrow ? null : map}
      </div>
      <ElsewhereNotes opened={opened} />
      {narrow ? (
        <div class="season-map">
          {map}
          <ChoiceRow
            label={ribbon.speed}
            labelUnseen
            options={speeds.map((value) => ({ value, label: speedNames[value] }))}
            value={speed}
            onChoose={(chosen) => send({ type: 'SPEED', speed: chosen })}
          />
        </div>
      ) : null}
      <InTurn as="figure" class="season-scene" scene={preferences.theme} of={season}>
        {finished ? (
          <FinishedQuilt season={season} theme={preferences.theme} query={query} />
        ) : asking && tellingPictures.includes(station) ? (
          <PredictCover station={station} theme={preferences.theme} />
        ) : (
          <LiveScene
            session={session}
            span={span}
            season={season}
            station={station}
            theme={preferences.theme}
            still={preferences.motion === 'still'}
            paused={snapshot.matches('resting')}
            alt={asking ? name : see.join(' ')}
          />
        )}
      </InTurn>
      <aside class="season-side">
        <InTurn as="div" class="season-part" scene={preferences.theme}>
          <Steady on={[season, station, words, predict.on, asking, predict.guess]}>
            <PredictPanel season={season} station={station} predict={predict} />
          </Steady>
          <Twin
            name={name}
            see={
              asking ? (
                <PredictCovered />
              ) : (
                <>
                  <SeenLines
                    season={season}
                    station={station}
                    lines={see}
                    rows={[...rows, ...saidValues(season, station, words, shown)]}
                  />
                  <SeenTable season={season} station={station} rows={rows} />
                </>
              )
            }
            change={
              <Steady on={[scenario, season, last, downstream, station, taken, words, asking]}>
                <ChoiceResult
                  before={asking ? null : last}
                  after={season}
                  station={station}
                  phrases={downstream}
                  runOf={({ scenario: decided }) => session.runOf(decided, seed)}
                />
                <DecisionsPanel scenario={scenario} station={station} onDecide={decide} />
                <UndoChoice left={taken.length} onUndo={undo} />
              </Steady>
            }
            changed={
              asking ? (
                <PredictCovered />
              ) : (
                <Steady on={[season, last, downstream, station, words, stopped]}>
                  {last && downstream ? <DownstreamLine phrases={downstream} /> : null}
                  {changes.length > 0 ? (
                    <>
                      {last ? null : <p class="caption">{messages.scenes.firstLook}</p>}
                      <WhatChanged
                        heading={last ? messages.readings.changedHeading : messages.readings.heading}
                        changes={changes}
                        headingUnseen
                      />
                    </>
                  ) : (
                    <p>{stopped}</p>
                  )}
                </Steady>
              )
            }
          />
        </InTurn>
        <InTurn as="div" class="season-part" scene={below} of={season}>
          <Steady on={[season, station, asking]}>
            {asking ? null : <FibrePanel season={season} station={station} />}
            <SewistLine station={station} />
          </Steady>
        </InTurn>
      </aside>
      <div class="season-ledger">
        <InTurn as="div" class="season-part" scene={below} of={season}>
          <Steady on={[season, station, stopped, preferences.theme, asking]}>
            {stopped ? <p class="stop-note">{stopped}</p> : null}
            {asking ? <PredictCovered /> : <LedgerPanel season={season} station={station} theme={preferences.theme} />}
          </Steady>
        </InTurn>
        <InTurn as="div" class="season-part" scene={below} of={season}>
          <Steady on={[season, station, scenario, seed, session, predict.on, asking]}>
            {asking ? null : (
              <>
                {station === 'ginning' ? <SeedPanel season={season} /> : null}
                {station === 'pressing' || station === 'classing' ? <BalesPanel season={season} /> : null}
                {station === 'classing' ? <MoneyPanel season={season} /> : null}
                <PracticePanel season={season} station={station} />
                <DoubtPanel season={season} />
              </>
            )}
            <CarePanel station={station} scenario={scenario} />
            <PredictSwitch on={predict.on} onChange={predict.turn} />
            <FarmBar session={session} scenario={scenario} seed={seed} />
          </Steady>
        </InTurn>
      </div>
      <div class="season-foot">
        <LiveTimeBar
          session={session}
          season={season}
          span={span}
          playing={snapshot.matches('playing')}
          speed={speed}
          onSeek={(step) => {
            send({ type: 'PAUSE' });
            session.runner.seek(step);
          }}
          onPlay={() => send({ type: 'PLAY' })}
          onPause={() => send({ type: 'PAUSE' })}
          onStep={() => send({ type: 'STEP_DAY' })}
          onStepStation={() => send({ type: 'STEP_STATION' })}
          onSpeed={(chosen) => send({ type: 'SPEED', speed: chosen })}
        />
        <div class="sew-in">
          {finished ? (
            <p class="sewn-note">{messages.navigation.finished}</p>
          ) : (
            <PatchButton
              ink="madder"
              primary
              label={thenTo ? `${messages.navigation.sewIn}, ${thenTo}` : messages.navigation.sewIn}
              onPress={sewIn}
            >
              {messages.navigation.sewIn}
              {thenTo ? <span class="sew-then">{thenTo}</span> : null}
            </PatchButton>
          )}
          {refused ? (
            <p class="refusal" role="alert">
              {refused}
            </p>
          ) : null}
        </div>
      </div>
      <Announcer message={finished ? messages.navigation.finished : next ? `${name}.` : name} />
    </main>
  );
}
