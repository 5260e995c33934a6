import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { fill } from '../../../src/language/fill.ts';
import type { Language } from '../../../src/language/language.ts';
import { localeOf } from '../../../src/language/language.ts';
import { loadMessages } from '../../../src/language/load-messages.ts';
import { en, type Messages } from '../../../src/language/messages/en.ts';
import { makeWords, useWords, WordsContext } from '../../../src/language/words.ts';
import { type Decision, decisionTable } from '../../../src/model/decisions.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import type { StationId } from '../../../src/model/station.ts';
import { ChoiceRow } from '../../../src/ui/choice-row.tsx';
import { CountTable } from '../../../src/ui/count-table.tsx';
import { DecisionControl } from '../../../src/ui/decision-control.tsx';
import { Doors } from '../../../src/ui/doors.tsx';
import { ErrorBoundary } from '../../../src/ui/error-boundary.tsx';
import { FibreCard } from '../../../src/ui/fibre-card.tsx';
import { FilePicker } from '../../../src/ui/file-picker.tsx';
import { LanguageUnitsBar } from '../../../src/ui/language-units-bar.tsx';
import { LedgerTable } from '../../../src/ui/ledger-table.tsx';
import { Navigation } from '../../../src/ui/navigation.tsx';
import { PatchButton } from '../../../src/ui/patch-button.tsx';
import { ProblemList } from '../../../src/ui/problem-list.tsx';
import { Ribbon, type RibbonSpeed } from '../../../src/ui/ribbon.tsx';
import { SewistLine } from '../../../src/ui/sewist-line.tsx';
import { Twin } from '../../../src/ui/twin.tsx';
import '../../../src/style/style.css';
import './gallery.css';
import { sampleCounts, sampleLedger, sampleLengths, sampleReadings } from './sample-lot.ts';

const asked = new URLSearchParams(location.search);
const language: Language = asked.get('language') === 'es' ? 'es' : 'en';
const unitSystem = asked.get('units') === 'metric' ? 'metric' : 'us';
if (asked.get('theme') === 'projector') document.documentElement.dataset.theme = 'projector';
document.documentElement.lang = localeOf(language);

const firstValues: Record<string, number | string | boolean> = {
  plantingDayOfYear: 124,
  variety: 'uplandMedium',
  rowInches: 38,
  seedsPerFoot: 3,
  harvestAid: true,
  openPercent: 60,
  stand: 'saw',
  lintCleaner: 'saw',
  lintCleaners: 2,
  moistureAddedPoints: 0.5,
};

function Decisions({ station }: { station: StationId }) {
  const [values, setValues] = useState(firstValues);
  return (
    <section class="stack">
      {Object.entries(decisionTable[station] as Record<string, Decision>).map(([key, decision]) => (
        <DecisionControl
          key={key}
          station={station}
          decisionKey={key}
          decision={decision}
          value={values[key] ?? 0}
          onDecide={(value) => setValues({ ...values, [key]: value })}
          {...(key === 'rowInches' ? { published: { low: 30, high: 40 } } : {})}
        />
      ))}
    </section>
  );
}

function Time() {
  const { messages, formats } = useWords();
  const [now, setNow] = useState(188);
  const [playing, setPlaying] = useState(false);
  const [speed, setSpeed] = useState<RibbonSpeed>('byWeek');
  const { events, day } = messages.scenes.ribbon;
  const event = (name: keyof typeof events, at: number) => ({ at, label: events[name], dateText: formats.day(at) });
  return (
    <Ribbon
      start={115}
      end={310}
      now={now}
      nowText={fill(day, { day: String(now - 114), date: formats.day(now) })}
      ticks={formats.monthStarts
        .filter((at) => at >= 115 && at <= 305)
        .map((at) => ({ at, label: formats.monthShort(at) }))}
      events={[event('firstSquare', 160), event('firstFlower', 185), event('cutOut', 215), event('harvest', 300)]}
      playing={playing}
      speed={speed}
      onScrub={setNow}
      onPlay={() => setPlaying(true)}
      onPause={() => setPlaying(false)}
      onStep={() => setNow(now + 1)}
      onStepStation={() => setNow(310)}
      onSpeed={setSpeed}
    />
  );
}

function Fault(): never {
  throw new Error('a part that breaks, for looking at');
}

function Gallery({ messages }: { messages: Messages }) {
  const words = makeWords(language, unitSystem, messages);
  const { stations, navigation, ledger, accounts } = messages;
  return (
    <WordsContext.Provider value={words}>
      <header class="choices">
        <Navigation
          pages={['season', 'bench', 'trace', 'lessons', 'teach', 'sources']}
          current="season"
          hrefOf={(page) => `#/${page}`}
        />
        <LanguageUnitsBar
          theme="day"
          onLanguage={() => {}}
          onUnitSystem={() => {}}
          onTheme={() => {}}
          motion="moving"
          onMotion={() => {}}
        />
      </header>
      <Doors hrefOf={(door) => `#/${door}`} />
      <Time />
      <h1>{stations.ginning.name}</h1>
      <p>{stations.ginning.instruction}</p>
      <div class="tables">
        <div class="stack">
          <h2>{ledger.heading}</h2>
          <LedgerTable
            ledger={sampleLedger}
            closingErrorRelative={closingErrorRelative(sampleLedger)}
            lotNames={{
              in: accounts.lotIn.replace('{name}', stations.cleaning.name),
              out: accounts.lotOut.replace('{name}', stations.pressing.name),
            }}
          />
          <CountTable ledgers={sampleCounts} />
        </div>
        <FibreCard
          lengthsMm={sampleLengths.after}
          beforeMm={sampleLengths.before}
          reading={sampleReadings.after}
          readingBefore={sampleReadings.before}
          more={[
            {
              label: messages.fibre.readings.colorGrade,
              before: '41',
              after: '31',
              trust: { mark: 'assumption', source: 'Fitted to the grades of 2019', note: messages.limits.colorChart },
            },
          ]}
        />
      </div>
      <div class="tables">
        <Decisions station="ginning" />
        <Decisions station="planting" />
        <Decisions station="boll" />
      </div>
      <div class="tables">
        <SewistLine station="ginning" />
        <ChoiceRow
          label={messages.decisions.ginning.lintCleaners.label}
          options={[0, 1, 2, 3].map((value) => ({ value, label: String(value) }))}
          value={1}
          onChoose={() => {}}
          basted
        />
        <FilePicker
          label={messages.problems.weather.choose}
          help={messages.problems.weather.help}
          accept=".csv"
          inUse={null}
          onText={() => {}}
          onFail={() => {}}
        />
        <ProblemList
          problems={[
            {
              field: 'decisions.planting.rowInches',
              value: '400',
              rule: { kind: 'range', low: 15, high: 40, step: 1, unit: 'inches' },
            },
            { field: 'era', value: 'roman', rule: { kind: 'choice', options: ['present', 'thirties'] } },
          ]}
        />
        <ErrorBoundary>
          <Fault />
        </ErrorBoundary>
        <Twin
          name={stations.ginning.name}
          see={<p>{messages.scenes.firstLook}</p>}
          change={<p>{messages.scenes.none}</p>}
        />
      </div>
      <div class="choices">
        <PatchButton onPress={() => {}} ink="madder" primary>
          {navigation.sewIn}
        </PatchButton>
        <PatchButton onPress={() => {}}>{messages.common.startOver}</PatchButton>
        <PatchButton onPress={() => {}} ink="indigo">
          {messages.common.share}
        </PatchButton>
        <PatchButton onPress={() => {}} refusal={messages.verdicts.module.ginNow}>
          {messages.common.next}
        </PatchButton>
      </div>
    </WordsContext.Provider>
  );
}

function Loader() {
  const [messages, setMessages] = useState<Messages>(en);
  useEffect(() => {
    void loadMessages(language).then(setMessages);
  }, []);
  return <Gallery messages={messages} />;
}

const place = document.getElementById('gallery');
if (place) render(<Loader />, place);
