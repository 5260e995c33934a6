import type { Language } from '../../src/language/language.ts';

/** Longest sentence and paragraph, words: GSA plain-language guidelines (none over 40; at most 150). */
const longestSentence = 40;
export const longestParagraph = 150;

/** A number of the text that stands for a sourced one. */
const sourced = 'N';
/** A text of a lesson's head with every sourced number and measure taken out. */
export const withoutNumbers = (text: string): string => text.replace(/\[\[[^\]]*\]\]/g, sourced);

export const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{N}][\p{L}\p{N}’'-]*/gu) ?? [];
export const sentencesOf = (text: string): string[] =>
  text
    .split(/(?<=[.?!…])\s+(?=[\p{Lu}¿¡])/u)
    .map((sentence) => sentence.trim())
    .filter(Boolean);

/** What a text may hold of numbers without a source, and nothing else: years, and a thread's count as a name. */
const allowedNumbers = [/\b(1[5-9]|20)\d\d\b/g, /\bNe \d+\b/g];
/** A hundred as what a share is counted of. */
const shareBase = /\b(every|a|of a|de cada|cada|entre) (hundred|cien)\b|\bcien fibras\b/gi;
const numberWords: Record<Language, RegExp> = {
  en: /\b(hundreds?|thousands?|millions?|billions?|dozens?|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|percent)\b/i,
  es: /(?<!\p{L})(cien|cientos?|mil|miles|mill[oó]n(es)?|docenas?|veinte|treinta|cuarenta|cincuenta|sesenta|setenta|ochenta|noventa|por ciento)(?!\p{L})/iu,
};

/** Numbers in a text that carry no source: digits, and words for large numbers. Counting words up to twelve are allowed. */
export function unsourcedNumbers(text: string, language: Language): string[] {
  const left = [...allowedNumbers, shareBase].reduce((rest, allowed) => rest.replace(allowed, ''), text);
  const found = [/\d[\d.,/-]*/.exec(left)?.[0], numberWords[language].exec(left)?.[0]];
  return found.flatMap((each) => (each === undefined ? [] : [`${each}: ${text}`]));
}

/** Claims about long staple and cotton at large that the figures read do not bear out. */
const unsupported = [
  /shrinks? less|less shrinkage/i,
  /(does not|doesn’t|never|less likely to|won’t) (wrinkle|fade|shrink)/i,
  /(wrinkles?|fades?|pills?) less/i,
  /lasts? (longer|forever)/i,
  /(more breathable|hypoallergenic|eco-friendly|sustainable)/i,
  /encoge menos|no (encoge|se arruga|se decolora|destiñe|pierde color)/i,
  /se (arruga|decolora) menos|dura (más|toda la vida)/i,
  /(más transpirable|hipoalergénic|ecológic|sostenible|sustentable)/i,
];
export const unsupportedClaims = (text: string): string[] =>
  unsupported.flatMap((claim) => {
    const found = claim.exec(text)?.[0];
    return found === undefined ? [] : [`${found}: ${text}`];
  });

/** Manner: no exclamation marks, no filler. */
const filler =
  /!|(?<!\p{L})(simply|obviously|of course|amazing|incredible|fascinating|powerful|simplemente|obviamente|por supuesto|increíble|fascinante)(?!\p{L})/iu;
export const fillerIn = (text: string): string[] => (filler.test(text) ? [text] : []);

export const longSentences = (text: string): string[] =>
  sentencesOf(text).filter((sentence) => wordsOf(sentence).length > longestSentence);

/** Groups of vowels, a silent e at the end left out: near enough for an alarm. */
function englishSyllables(word: string): number {
  const groups = word.toLowerCase().match(/[aeiouy]+/g)?.length ?? 0;
  return Math.max(1, /[^aeiouyl]e$/i.test(word) ? groups - 1 : groups);
}
const spanishSyllables = (word: string): number =>
  Math.max(1, word.toLowerCase().match(/[aeoáéó]|[iuüíú]+(?![aeoáéó])|[íú]/g)?.length ?? 0);

/**
 * How hard a text is: Flesch-Kincaid grade in English (Kincaid 1975: 0.39 words a sentence + 11.8 syllables a word - 15.59), and
 * Szigriszt-Pazos ease in Spanish (1993: 206.835 - 62.3 syllables a word - words a sentence). Both from memory; alarms, not gates.
 */
export function readingLevel(text: string, language: Language): number {
  const words = wordsOf(text);
  const perSentence = words.length / Math.max(1, sentencesOf(text).length);
  const count = language === 'es' ? spanishSyllables : englishSyllables;
  const perWord = words.reduce((sum, word) => sum + count(word), 0) / Math.max(1, words.length);
  return language === 'es' ? 206.835 - 62.3 * perWord - perSentence : 0.39 * perSentence + 11.8 * perWord - 15.59;
}
