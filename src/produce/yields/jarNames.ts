import { lookUp, type Named } from '../../common/names';
import type { Quantity } from '../../quantity/types';

/** A jar by its nominal size; the jar table itself, with brims and mouths, is another module's. */
export interface JarName extends Named {
  readonly volume: Quantity<'volume'>;
}

// Names are the sizes themselves, in US measure: a pint jar is taken to hold one pint.
const JARS: readonly JarName[] = [
  { name: '4 oz', volume: { value: 4, unit: 'fl oz' }, synonyms: ['4 oz jelly jar', 'quarter pint', '4 fl oz'] },
  {
    name: 'half-pint',
    volume: { value: 8, unit: 'fl oz' },
    synonyms: ['8 oz', '8 fl oz', 'half-pint (8 oz)', '1/2 pint'],
  },
  { name: '12 oz', volume: { value: 12, unit: 'fl oz' }, synonyms: ['12 oz jelly jar', '12 fl oz', '3/4 pint'] },
  { name: 'pint', volume: { value: 1, unit: 'pint' }, synonyms: ['16 oz', '16 fl oz', 'pint (16 oz)', '1 pint'] },
  {
    name: '24 oz',
    volume: { value: 24, unit: 'fl oz' },
    synonyms: ['1 1/2 pint', '1 1/2 pint (24 oz)', '1.5 pint', '24 fl oz'],
  },
  { name: '28 oz', volume: { value: 28, unit: 'fl oz' }, synonyms: ['28 fl oz'] },
  { name: 'quart', volume: { value: 1, unit: 'quart' }, synonyms: ['32 oz', '32 fl oz', 'quart (32 oz)', '1 quart'] },
  {
    name: 'half-gallon',
    volume: { value: 2, unit: 'quart' },
    synonyms: ['64 oz', 'half-gallon (64 oz)', '1/2 gallon', '64 fl oz', '2 quart'],
  },
];

/** The jar of this name: `pint`, `pints`, `half-pint`, `16 oz` ... */
export const findJar = (text: string): JarName => lookUp(text, JARS, 'jar', 'jar size');
