/** What names are compared and offered by, in the plain way: every name is cut by patterns and measured letter by letter. */
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
  const irregular = IRREGULAR.get(word);
  if (irregular !== undefined) return irregular;
  if (word.length < 4 || SINGULAR.has(word) || word.endsWith('ss') || word.endsWith('us')) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:sh|ch|x|z)es$/.test(word)) return word.slice(0, -2);
  return word.endsWith('s') ? word.slice(0, -1) : word;
}

/** The words of a name, in its order: lower case, singular, without punctuation, accents and small words. */
export const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z0-9%/]+/g, ' ')
    .trim()
    .split(' ')
    .filter((word) => !FILLERS.has(word))
    .map(singular);

/**
 * The form in which names are compared: its words in alphabetical order, so that `Cherries, sour` and `sour cherry`
 * are one name.
 */
export const nameKey = (text: string): string => wordsOf(text).sort().join(' ');

/**
 * How many letters must be put in, left out, changed or swapped with a neighbor to make one word the other; counting
 * stops at `most`.
 */
export function editDistance(one: string, other: string, most = Number.POSITIVE_INFINITY): number {
  let twoAbove: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, j) => j);
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1] ? 0 : 1;
      const put = (above[j] as number) + 1;
      const left = (row[j - 1] as number) + 1;
      let best = Math.min(put, left, (above[j - 1] as number) + same);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        best = Math.min(best, (twoAbove[j - 2] as number) + 1);
      }
      row.push(best);
      if (best < least) least = best;
    }
    // no later row falls below the least of this one
    if (least >= most) return most;
    twoAbove = above;
    above = row;
  }
  return above[other.length] as number;
}

/** Keys of table names, made once: only names of our own tables come here, never a caller's text. */
const tableKeys = new Map<string, string>();
function tableKey(name: string): string {
  const known = tableKeys.get(name);
  if (known !== undefined) return known;
  const key = nameKey(name);
  tableKeys.set(name, key);
  return key;
}

/** How many letters of a name are not among these. */
function strangers(name: string, letters: ReadonlySet<string>): number {
  let count = 0;
  for (const letter of name) if (!letters.has(letter)) count++;
  return count;
}

/** The known names nearest to a text: those that share a word with it first, then by edit distance; at most five. */
export function nearestNames(text: string, names: readonly string[]): string[] {
  const key = nameKey(text.slice(0, 60));
  const words = new Set(key.split(' '));
  const letters = new Set(key);
  const scored = names.flatMap((candidate) => {
    const other = tableKey(candidate);
    const shared = other.split(' ').some((word) => word.length > 2 && words.has(word));
    const longer = Math.max(key.length, other.length, 1);
    // the lengths alone put it too far off: no need to count letters
    if (!shared && Math.abs(key.length - other.length) / longer >= 0.5) return [];
    const far = shared ? Number.POSITIVE_INFINITY : longer / 2;
    // nor where too many of its letters are none of the text's: each must be put in or changed
    if (!shared && strangers(other, letters) >= far) return [];
    return [{ candidate, score: editDistance(key, other, far) / longer - (shared ? 1 : 0) }];
  });
  return scored
    .filter(({ score }) => score < 0.5)
    .sort((a, b) => a.score - b.score)
    .slice(0, 5)
    .map(({ candidate }) => candidate);
}
