import { useId } from 'preact/hooks';
import { useLesson } from '../lesson-frame.ts';
import { Said } from './said.tsx';

/** One thing to do at home with cloth: what it needs, the steps, what to look for, and a caution where work can hurt. */
export function AtHome() {
  const { matter, words } = useLesson();
  const { title, needs, steps, look, caution } = matter.athome;
  const said = words.sentence;
  const id = useId();
  return (
    <section class="patch at-home" data-cut="2" aria-labelledby={id}>
      <p class="caption">{said.athome}</p>
      <h2 id={id}>{title}</h2>
      <p>
        <b>{said.needs}:</b> <Said text={needs} />
      </p>
      <ol>
        {steps.map((step) => (
          <li key={step}>
            <Said text={step} />
          </li>
        ))}
      </ol>
      <p>
        <b>{said.look}:</b> <Said text={look} />
      </p>
      {caution ? (
        <p>
          <b>{said.caution}:</b> <Said text={caution} />
        </p>
      ) : null}
    </section>
  );
}
