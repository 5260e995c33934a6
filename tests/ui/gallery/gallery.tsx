import { render } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Language } from '../../../src/language/language.ts';
import { localeOf } from '../../../src/language/language.ts';
import { loadMessages } from '../../../src/language/load-messages.ts';
import { en, type Messages } from '../../../src/language/messages/en.ts';
import { makeWords, WordsContext } from '../../../src/language/words.ts';
import { type Decision, decisionTable } from '../../../src/model/decisions.ts';
import { closingErrorRelative } from '../../../src/model/ledger.ts';
import type { StationId } from '../../../src/model/station.ts';
import { CountTable } from '../../../src/ui/count-table.tsx';
import { DecisionControl } from '../../../src/ui/decision-control.tsx';
import { FibreCard } from '../../../src/ui/fibre-card.tsx';
import { LedgerTable } from '../../../src/ui/ledger-table.tsx';
import { PatchButton } from '../../../src/ui/patch-button.tsx';
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

function Gallery({ messages }: { messages: Messages }) {
  const words = makeWords(language, unitSystem, messages);
  const { stations, navigation, ledger, accounts } = messages;
  return (
    <WordsContext.Provider value={words}>
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
