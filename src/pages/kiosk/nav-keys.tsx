import { type Language, languages } from '../../language/language.ts';
import { KioskKey } from './kiosk-key.tsx';
import type { ScreenProps } from './screen.ts';

/** What each language calls itself. */
export const ownNames: Readonly<Record<Language, string>> = { en: 'English', es: 'Español' };

export interface Aloud {
  readonly canSpeak: boolean;
  readonly speaking: boolean;
  readonly listen: () => void;
  readonly hush: () => void;
}

/** Home, Back and the other language: on every screen, in one place. Where the device can speak, also what is heard and how loud. */
export function NavKeys({ context, send, said, aloud }: ScreenProps & { readonly aloud: Aloud }) {
  const { keys } = said;
  const others = languages.filter((language) => language !== context.language && context.languages.includes(language));
  return (
    <>
      <KioskKey cut="home" onPress={() => send({ type: 'HOME' })}>
        {keys.home}
      </KioskKey>
      <KioskKey cut="back" onPress={() => send({ type: 'BACK' })}>
        {keys.back}
      </KioskKey>
      {others.map((language) => (
        <KioskKey key={language} cut={language} onPress={() => send({ type: 'LANGUAGE', language })}>
          <span lang={language}>{ownNames[language]}</span>
        </KioskKey>
      ))}
      {aloud.canSpeak ? (
        <>
          <KioskKey cut="listen" onPress={aloud.speaking ? aloud.hush : aloud.listen} pressed={aloud.speaking}>
            {aloud.speaking ? keys.hush : keys.listen}
          </KioskKey>
          <KioskKey cut="softer" label={keys.softer} onPress={() => send({ type: 'VOLUME', by: -1 })}>
            −
          </KioskKey>
          <KioskKey cut="louder" label={keys.louder} onPress={() => send({ type: 'VOLUME', by: 1 })}>
            +
          </KioskKey>
        </>
      ) : null}
    </>
  );
}
