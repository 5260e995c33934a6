import { useEffect, useRef, useState } from 'preact/hooks';
import {
  firstState,
  pressed,
  readMessage,
  readState,
  type ShowMessage,
  type ShowPress,
  type ShowState,
} from '../../../teach/show/show-state.ts';
import type { ShowStep } from '../../../teach/show/show-steps.ts';

const channelName = 'seamfield.show';
const place = 'seamfield.show.1';

function keptState(query: string): ShowState | null {
  try {
    return readState(localStorage.getItem(place), query);
  } catch {
    return null;
  }
}

function keep(state: ShowState): void {
  try {
    localStorage.setItem(place, JSON.stringify(state));
  } catch {
    // A reload then asks the other window, or begins at the first step.
  }
}

/** A kept step that the plan no longer has is its last. */
const within = (state: ShowState, steps: readonly ShowStep[]): ShowState =>
  state.step < steps.length ? state : { ...state, step: Math.max(0, steps.length - 1) };

/**
 * Where a show stands, the same in every window of this browser that shows the plan: each tells the others what it changed, the
 * later change holds, and one that is opened or loaded again asks.
 * @param query the link's query of the plan
 */
export function useShow(query: string, steps: readonly ShowStep[]) {
  const [state, setState] = useState<ShowState>(() => within(keptState(query) ?? firstState(query), steps));
  const now = useRef(state);
  const say = useRef<(message: ShowMessage) => void>(() => undefined);
  const take = (next: ShowState) => {
    now.current = within(next, steps);
    setState(now.current);
  };
  useEffect(() => {
    const channel = new BroadcastChannel(channelName);
    say.current = (message) => channel.postMessage(message);
    channel.onmessage = ({ data }) => {
      const message = readMessage(data);
      if (message?.kind === 'hello' && message.query === query) say.current({ kind: 'state', state: now.current });
      if (message?.kind === 'state' && message.state.query === query && message.state.changedMs > now.current.changedMs)
        take(message.state);
    };
    say.current({ kind: 'hello', query });
    return () => channel.close();
  }, [query, steps]);
  const press = (key: ShowPress) => {
    take(pressed(now.current, key, steps, Date.now()));
    keep(now.current);
    say.current({ kind: 'state', state: now.current });
  };
  return { state, press };
}
