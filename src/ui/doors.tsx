import { useWords } from '../language/words.ts';
import { Picture } from './picture.tsx';

/** The three ways in. */
export type DoorId = 'season' | 'bench' | 'teach';

export interface DoorsProps {
  readonly hrefOf: (door: DoorId) => string;
  /** A drawing for each door, as SVG text. */
  readonly pictures?: Partial<Record<DoorId, string>>;
  /** Doors that do not open yet are left out by the page, not greyed. */
  readonly doors?: readonly DoorId[];
}

/** The first view: what this is, in one fact, and the doors. The first door is the loud one. */
export function Doors({ hrefOf, pictures = {}, doors = ['season', 'bench', 'teach'] }: DoorsProps) {
  const { messages, unitSystem } = useWords();
  const { doors: words } = messages.navigation;
  return (
    <div class="doors">
      <h1>{words.heading[unitSystem]}</h1>
      <p class="doors-lead">{words.lead}</p>
      <ul>
        {doors.map((door, index) => (
          <li key={door}>
            <a
              class="patch door"
              href={hrefOf(door)}
              data-ink={index === 0 ? 'weld' : 'paper'}
              data-cut={String(index + 1)}
              data-primary={index === 0 ? '' : undefined}
            >
              {pictures[door] ? <Picture svg={pictures[door]} alt="" class="door-picture" /> : null}
              <span class="door-name">{words[door].name}</span>
              <span>{words[door].line}</span>
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}
