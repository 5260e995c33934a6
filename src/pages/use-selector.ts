import { useEffect, useState } from 'preact/hooks';

/** The part of an actor that a component reads. */
interface Readable<Snapshot> {
  getSnapshot(): Snapshot;
  subscribe(listener: (snapshot: Snapshot) => void): { unsubscribe(): void };
}

/** Reads a value from an actor and renders again only when that value changes. */
export function useSelector<Snapshot, Value>(actor: Readable<Snapshot>, pick: (snapshot: Snapshot) => Value): Value {
  const [value, setValue] = useState(() => pick(actor.getSnapshot()));
  useEffect(() => {
    const follow = () => setValue(() => pick(actor.getSnapshot()));
    const subscription = actor.subscribe(follow);
    // The actor may have moved between the first render and now.
    follow();
    return () => subscription.unsubscribe();
  }, [actor, pick]);
  return value;
}
