import { fill } from '../../language/fill.ts';
import { guidedStops } from '../../statechart/kiosk.ts';
import { BlockKeys } from './explore.tsx';
import { KioskKey } from './kiosk-key.tsx';
import { type Aloud, NavKeys, ownNames } from './nav-keys.tsx';
import type { ScreenProps } from './screen.ts';
import type { Screen } from './screen-of.ts';

/** Every control of a screen, in one low band: choices above, the way on and back below them. */
export function VisitKeys(props: ScreenProps & { readonly screen: Screen; readonly aloud: Aloud }) {
  const { screen, context, settings, send, said } = props;
  const { keys } = said;
  const asks = screen === 'guided' && context.stop === 2;
  return (
    <nav class="kiosk-band" aria-label={said.band}>
      {screen === 'language' ? (
        <div class="kiosk-row kiosk-choices">
          {settings.languages.map((language, i) => (
            <KioskKey
              key={language}
              cut={language}
              ink={i === 0 ? 'weld' : 'indigo'}
              primary={i === 0}
              onPress={() => send({ type: 'LANGUAGE', language })}
            >
              <span lang={language}>{ownNames[language]}</span>
            </KioskKey>
          ))}
        </div>
      ) : null}
      {asks ? (
        <div class="kiosk-row kiosk-choices">
          {(['lint', 'seed'] as const).map((guess) => (
            <KioskKey
              key={guess}
              cut={guess}
              ink={guess === 'lint' ? 'lint' : 'walnut'}
              primary={guess === 'lint' && context.guess === null}
              pressed={context.guess === guess}
              onPress={() => send({ type: 'GUESS', guess })}
            >
              {keys[guess]}
            </KioskKey>
          ))}
        </div>
      ) : null}
      {screen === 'comparing' ? (
        <div class="kiosk-row kiosk-choices">
          {said.stations[context.station].choices.map((choice, i) => (
            <KioskKey
              key={choice}
              cut={choice}
              ink={context.side === i ? 'indigo' : 'lint'}
              pressed={context.side === i}
              primary={context.side !== i}
              onPress={() => send({ type: 'SIDE', side: i === 0 ? 0 : 1 })}
            >
              {choice}
            </KioskKey>
          ))}
        </div>
      ) : null}
      {screen === 'looking' ? <BlockKeys {...props} /> : null}
      <div class="kiosk-row">
        {screen === 'language' ? null : <NavKeys {...props} />}
        {screen === 'language' ? (
          <KioskKey cut="home" onPress={() => send({ type: 'HOME' })}>
            {keys.home}
          </KioskKey>
        ) : null}
        {screen === 'looking' ? (
          <>
            <KioskKey cut="compare" ink="indigo" onPress={() => send({ type: 'COMPARE' })} primary>
              {keys.compare}
            </KioskKey>
            <KioskKey cut="lesson" ink="indigo" onPress={() => send({ type: 'LESSON' })}>
              {keys.lesson}
            </KioskKey>
          </>
        ) : null}
        {screen === 'keepsake' ? (
          <KioskKey cut="explore" ink="weld" primary onPress={() => send({ type: 'EXPLORE' })}>
            {keys.explore}
          </KioskKey>
        ) : null}
        {screen === 'guided' ? (
          <KioskKey
            cut="next"
            ink={asks && !context.guess ? 'paper' : 'weld'}
            primary={!asks || context.guess !== null}
            onPress={() => send({ type: 'NEXT' })}
          >
            {keys.next}
          </KioskKey>
        ) : null}
      </div>
      {screen === 'guided' ? (
        <ol
          class="kiosk-way"
          aria-label={fill(said.stopOf, { number: String(context.stop + 1), all: String(guidedStops) })}
        >
          {Array.from({ length: guidedStops }, (_, i) => (
            <li key={i} data-state={i < context.stop ? 'sewn' : i === context.stop ? 'basted' : 'chalked'} />
          ))}
        </ol>
      ) : null}
    </nav>
  );
}
