/** What the name of a jar holds besides its size: the mouth, the word jar, the ounces in brackets. */
import { fail } from '../errors/StillroomError';
import { type JarMouth, mouthRows } from './mouth';

/** Every spelling of each mouth, the longest first, as one pattern: `wide mouth` is also `wide-mouthed`. */
const MOUTHS = mouthRows.map(({ name, synonyms = [] }) => {
  const spellings = [name, ...synonyms].sort((one, other) => other.length - one.length);
  const pattern = spellings.map((spelling) => spelling.split(' ').join('[\\s-]*')).join('|');
  return { name, pattern: new RegExp(`\\b(?:${pattern})(?:ed)?\\b`, 'gi') };
});

/** The mouth that a name says, and the name without it; two mouths in one name are an error. */
export function sayMouth(given: string, path: string): { rest: string; mouth?: JarMouth } {
  let rest = given;
  const said: JarMouth[] = [];
  for (const { name, pattern } of MOUTHS) {
    const left = rest.replace(pattern, ' ');
    if (left !== rest) said.push(name);
    rest = left;
  }
  if (said.length > 1) fail('CONTRADICTION', path, given, `one mouth, ${said.join(' or ')}`);
  return said[0] === undefined ? { rest } : { rest, mouth: said[0] };
}

const BRACKETS = /\(\s*(\d[^()]*?)\s*\)/;

/** The size or volume that is named, and the volume in brackets after it: `pint (16 oz)`. */
export function plainJar(given: string): { text: string; beside?: string } {
  const beside = BRACKETS.exec(given)?.[1];
  const text = given
    .replace(BRACKETS, ' ')
    .replace(/(?<=[a-z.\d½¼¾])-(?=[a-z])|_/gi, ' ')
    .replace(/\bfl\. ?(?=oz)/i, 'fl ')
    .replace(/\b(?:canning|mason|preserving|jelly|jars?)\b/gi, ' ')
    .replace(/\bone\b/gi, '1')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;]+|[\s,;.]+$/g, '')
    // read as a number, or the comparison of names would leave "and" out and find a half-pint
    .replace(/^(?:(?:a|1) )?([a-z]+?)s? and (?:a )?half$/i, '1 1/2 $1')
    .replace(/^(?:a|1) and (?:a )?half ([a-z]+)$/i, '1 1/2 $1');
  if (beside === undefined) return { text };
  return text === '' ? { text: beside } : { text, beside };
}

/** Whether the text holds a number, so that it is a volume and not a name. */
export const isNumbered = (text: string): boolean => /[\d¼-¾⅐-⅞]/.test(text);

/** Ounces of a jar are fluid ounces. */
export const volumeText = (text: string): string => text.replace(/^([^a-z]*?)\s*(?:oz|ounces?)$/i, '$1 fl oz');
