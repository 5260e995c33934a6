import { useEffect, useState } from 'preact/hooks';
import { useWords } from '../language/words.ts';
import './new-version.css';
import { hasNewVersion, onNewVersion, startSiteWorker, takeNewVersion } from './site-worker.ts';

/** Keeps the site for use offline, and once a newer version is there, a button that loads it. Nothing is loaded unasked. */
export function NewVersion() {
  const { common } = useWords().messages;
  const [ready, setReady] = useState(hasNewVersion);
  useEffect(() => {
    startSiteWorker();
    return onNewVersion(() => setReady(true));
  }, []);
  return (
    <div class="bar-pair new-version" role="status">
      {ready ? (
        <button type="button" onClick={takeNewVersion}>
          {common.newVersion}
        </button>
      ) : null}
    </div>
  );
}
