import { useEffect, useState } from 'preact/hooks';
import { startHeartbeat } from '../../../kiosk/heartbeat.ts';
import { type Language, languages, localeOf } from '../../../language/language.ts';
import { useWords, WordsContext } from '../../../language/words.ts';
import { setPageLanguage } from '../../page-language.ts';
import { startSiteWorker } from '../../site-worker.ts';
import { InstallationSheet } from './installation-sheet.tsx';
import { SetupPage } from './setup-page.tsx';
import { useIdleReturn } from './use-idle-return.ts';
import { useInstallerWords } from './use-setup-words.ts';
import './setup.css';

export interface InstallerPageProps {
  readonly id: 'setup' | 'sheet';
}

/** The pages of whoever installs a kiosk, in either language: the settings, and the sheet to print. */
export default function InstallerPage({ id }: InstallerPageProps) {
  const [language, setLanguage] = useState<Language>(useWords().language);
  const loaded = useInstallerWords(language);
  useEffect(startSiteWorker, []);
  useEffect(() => startHeartbeat(() => 'setup'), []);
  useEffect(() => {
    setPageLanguage(language);
    window.scrollTo(0, 0);
  }, [language, id]);
  useIdleReturn();
  if (!loaded) return <main id="main" class="installer-page" aria-busy="true" />;
  const { words, setup, sheet } = loaded;
  return (
    <WordsContext.Provider value={words}>
      <main id="main" class="installer-page" tabIndex={-1}>
        <nav class="installer-bar" aria-label={setup.title}>
          <a href="#/kiosk">{setup.away}</a>
          <a href="#/kiosk/setup" aria-current={id === 'setup' ? 'page' : undefined}>
            {setup.title}
          </a>
          <a href="#/kiosk/sheet" aria-current={id === 'sheet' ? 'page' : undefined}>
            {setup.sheet}
          </a>
          <span class="bar-pair">
            {languages.map((each) => (
              <button
                key={each}
                type="button"
                lang={localeOf(each)}
                aria-pressed={each === words.language}
                onClick={() => setLanguage(each)}
              >
                {words.messages.common.languages[each]}
              </button>
            ))}
          </span>
        </nav>
        {id === 'setup' ? <SetupPage said={setup} /> : <InstallationSheet said={sheet} />}
      </main>
    </WordsContext.Provider>
  );
}
