import { useEffect, useMemo } from 'preact/hooks';
import { createActor } from 'xstate';
import { sayAttract } from '../../kiosk/attract-now.ts';
import { keptSettings } from '../../kiosk/settings.ts';
import { kioskMachine } from '../../statechart/kiosk.ts';
import { useSelector } from '../use-selector.ts';

/** What stands on the screen all day. */
export function Kiosk() {
  const settings = useMemo(keptSettings, []);
  const actor = useMemo(() => createActor(kioskMachine, { input: settings }).start(), [settings]);
  const attract = useSelector(actor, (snapshot) => snapshot.matches('attract'));
  useEffect(() => {
    sayAttract(attract);
    return () => sayAttract(undefined);
  }, [attract]);
  useEffect(() => () => void actor.stop(), [actor]);
  return <main id="main" class="kiosk" tabIndex={-1} data-attract={attract} />;
}
