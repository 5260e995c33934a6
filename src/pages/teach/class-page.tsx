import { useMemo, useRef, useState } from 'preact/hooks';
import { fill } from '../../language/fill.ts';
import { useWords } from '../../language/words.ts';
import { decodeRun, encodeRun } from '../../statechart/saved-run.ts';
import { mostPupils, unreachable } from '../../teach/class/class-seasons.ts';
import { encodePlan } from '../../teach/plan/plan-link.ts';
import { ChoiceRow } from '../../ui/choice-row.tsx';
import { PatchButton } from '../../ui/patch-button.tsx';
import { Picture } from '../../ui/picture.tsx';
import { hashOf } from '../route.ts';
import { ClassAnswers } from './class-answers.tsx';
import { qrSvg } from './qr-picture.ts';
import { openPlan } from './use-plan.ts';
import type { TeachWords } from './use-teach-words.ts';
import './class.css';

export interface ClassPageProps {
  readonly query: string;
  readonly teach: TeachWords;
}

/** Pupils that a class begins with. */
const usualPupils = 24;
/** No link is longer than this, so that its code stays readable from the back of a room. */
const longestLink = 300;

/** The class link with its code, and every pupil's own answer worked out here. */
export function ClassPage({ query, teach }: ClassPageProps) {
  const { formats, messages } = useWords();
  const { said } = teach;
  const { plan } = useMemo(() => openPlan(query), [query]);
  const [each, setEach] = useState<'same' | 'own'>('own');
  const [pupils, setPupils] = useState(usualPupils);
  const [told, setTold] = useState('');
  // A record of real weather stays on this device: pupils' devices make the year up, and so do the answers here.
  const { scenario, seed } = decodeRun(plan.season).run;
  const run = { scenario, seed };
  const season = encodeRun(run);
  const hash =
    each === 'same'
      ? hashOf({ page: 'season', station: 'planting', query: encodeRun({ ...run, predict: true }) })
      : hashOf({ page: 'teach', id: 'join', query: `pupils=${pupils}&${season}` });
  const address = `${location.href.split('#')[0]}${hash}`;
  const code = useMemo(() => qrSvg(address), [address]);
  const large = useRef<HTMLDialogElement>(null);
  const barrier = unreachable(location.protocol, location.hostname);
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setTold(said.classCopied),
      () => setTold(`${messages.common.shareFailed} ${address}`),
    );
  return (
    <>
      <p class="class-back">
        <a href={hashOf({ page: 'teach', id: '', query: encodePlan(plan) })}>{said.backToPlan}</a>
      </p>
      <section class="class-link">
        <h1>{said.classTitle}</h1>
        <p class="page-lead">{said.classLead}</p>
        {barrier ? (
          <div class="patch class-barrier" data-state="basted" data-cut="2" role="note">
            <p>
              <b>{said.barriers[barrier]}</b>
            </p>
            <p>
              {said.barrierDo} <code>npm start -- --share</code>
            </p>
            <p>{said.barrierHost}</p>
          </div>
        ) : null}
        <ChoiceRow
          label={said.eachLabel}
          options={[
            { value: 'own', label: said.each.own },
            { value: 'same', label: said.each.same },
          ]}
          value={each}
          onChoose={setEach}
        />
        {each === 'own' ? (
          <label class="teach-field">
            <span class="control-label">{fill(said.pupilsLabel, { most: formats.count(mostPupils) })}</span>
            <input
              class="teach-typed teach-seed"
              inputMode="numeric"
              autoComplete="off"
              maxLength={2}
              value={String(pupils)}
              onChange={(event) => {
                const count = Number(event.currentTarget.value);
                if (Number.isInteger(count) && count >= 1 && count <= mostPupils) setPupils(count);
                else event.currentTarget.value = String(pupils);
              }}
            />
          </label>
        ) : null}
        <p>
          <a class="class-address" href={hash}>
            {address}
          </a>
        </p>
        <div class="teach-keep-buttons">
          <PatchButton ink="weld" onPress={copy}>
            {said.classCopy}
          </PatchButton>
          <PatchButton onPress={() => large.current?.showModal()}>{said.classLarge}</PatchButton>
          <PatchButton onPress={() => print()}>{messages.common.print}</PatchButton>
        </div>
        <p class="caption">
          {fill(address.length > longestLink ? said.classTooLong : said.classHolds, {
            n: formats.count(address.length),
            most: formats.count(longestLink),
          })}
        </p>
        <p role="status" class="caption">
          {told}
        </p>
      </section>
      <div class="class-code">
        <Picture svg={code} alt={said.codeAlt} />
      </div>
      <dialog class="class-large" ref={large} aria-label={said.codeAlt}>
        <Picture svg={code} alt={said.codeAlt} />
        <p>{address}</p>
        <PatchButton onPress={() => large.current?.close()}>{said.classSmall}</PatchButton>
      </dialog>
      <ClassAnswers plan={plan} run={run} pupils={each === 'own' ? pupils : 0} teach={teach} />
    </>
  );
}
