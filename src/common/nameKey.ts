/** The form in which names are compared. */

const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['leaves', 'leaf'],
  ['loaves', 'loaf'],
  ['halves', 'half'],
  ['halved', 'half'],
  ['cookies', 'cookie'],
  ['chilies', 'chili'],
  ['chillies', 'chili'],
  ['chiles', 'chile'],
  ['potatoes', 'potato'],
  ['tomatoes', 'tomato'],
  ['mangoes', 'mango'],
  ['radishes', 'radish'],
  ['peaches', 'peach'],
  ['squashes', 'squash'],
]);
/** Words that end in s and are singular. */
const SINGULAR = new Set([
  'asparagus',
  'couscous',
  'citrus',
  'hummus',
  'molasses',
  'cress',
  'watercress',
  'swiss',
  'brussels',
  'less',
  'is',
  'as',
  'gas',
  'glass',
  'process',
]);
const FILLERS = new Set(['and', 'or', 'of', 'the', 'a', 'in', 'with', 'fresh']);

function singular(word: string): string {
  if (!word.endsWith('s') && word !== 'halved') return word;
  const irregular = IRREGULAR.get(word);
  if (irregular !== undefined) return irregular;
  if (word.length < 4 || SINGULAR.has(word) || word.endsWith('ss') || word.endsWith('us')) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.endsWith('es') && /(?:sh|ch|x|z)es$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}

/** Whether a sign is part of a word: a to z, 0 to 9, % and /. */
const isWordSign = (sign: number): boolean => (sign >= 97 && sign <= 122) || (sign >= 47 && sign <= 57) || sign === 37;
const isBeyondAscii = (text: string): boolean => {
  for (let at = 0; at < text.length; at++) if (text.charCodeAt(at) > 127) return true;
  return false;
};
const withoutAccents = (text: string): string => text.normalize('NFD').replace(/[\u0300-\u036f]/g, '');

/** The words of a name, in its order: lower case, singular, without punctuation, accents and small words. */
export function wordsOf(text: string): string[] {
  const lower = text.toLowerCase();
  const plain = isBeyondAscii(lower) ? withoutAccents(lower) : lower;
  const words: string[] = [];
  for (let at = 0; at < plain.length; at++) {
    if (!isWordSign(plain.charCodeAt(at))) continue;
    const start = at;
    while (isWordSign(plain.charCodeAt(at))) at += 1;
    const word = plain.slice(start, at);
    if (!FILLERS.has(word)) words.push(singular(word));
  }
  return words;
}

/**
 * The form in which names are compared: its words in alphabetical order, so that `Cherries, sour` and `sour cherry`
 * are one name.
 */
export const nameKey = (text: string): string => keyOfWords(wordsOf(text));

/** The same for a name that is in words already. */
export const keyOfWords = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : [...words].sort().join(' ');
