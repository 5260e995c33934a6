import { useEffect, useState } from 'preact/hooks';
import { type Language, localeOf } from '../../language/language.ts';

const voices = (): readonly SpeechSynthesisVoice[] =>
  typeof speechSynthesis === 'undefined' ? [] : speechSynthesis.getVoices();

/** A voice that the device itself has for a language: one from elsewhere would need the network and send the words away. */
const localVoice = (language: Language) =>
  voices().find(({ lang, localService }) => localService && lang.toLowerCase().startsWith(language)) ?? null;

/**
 * Reads words aloud where the device has a voice for them.
 * @param onSpeak said as it begins, onSpoken as it ends, however it ends
 */
export function useReadAloud(language: Language, onSpeak: () => void, onSpoken: () => void) {
  const [voice, setVoice] = useState(() => localVoice(language));
  const [speaking, setSpeaking] = useState(false);
  useEffect(() => {
    const look = () => setVoice(localVoice(language));
    look();
    if (typeof speechSynthesis === 'undefined') return;
    speechSynthesis.addEventListener('voiceschanged', look);
    return () => {
      speechSynthesis.removeEventListener('voiceschanged', look);
      speechSynthesis.cancel();
    };
  }, [language]);
  const hush = () => {
    if (voice) speechSynthesis.cancel();
  };
  const speak = (text: string, volumePercent: number) => {
    if (!voice) return;
    speechSynthesis.cancel();
    const said = new SpeechSynthesisUtterance(text);
    said.voice = voice;
    said.lang = localeOf(language);
    said.volume = volumePercent / 100;
    const ended = () => {
      setSpeaking(false);
      onSpoken();
    };
    said.addEventListener('end', ended);
    said.addEventListener('error', ended);
    setSpeaking(true);
    onSpeak();
    speechSynthesis.speak(said);
  };
  return { canSpeak: voice !== null, speaking, speak, hush };
}
