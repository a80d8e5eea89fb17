/** How much salt does this crock take? Invented: three crocks weighed on a kitchen scale, for a school garden. */
import { brine, formatQuantity } from 'stillroom';

const crocks = [
  { food: 'cabbage', share: '2.4 %', shareOf: 'food', ready: '6 kg' },
  { food: 'carrots', share: '2.5 %', shareOf: 'water and food', ready: '2.2 kg', water: '1.5 L' },
  { food: 'cucumbers', share: '3.5 %', shareOf: 'water', ready: '3 kg', water: '2.5 L' },
];

for (const crock of crocks) {
  const { food, ready, water, share, shareOf } = crock;
  console.log(
    `${ready} of ${food}${water === undefined ? '' : ` and ${water} of water`}, ${share} salt of the ${shareOf}`,
  );

  const answer = brine(crock);
  if (answer.known === false) {
    console.log(`  No: ${answer.reason.text}`);
    for (const { text } of answer.instead) console.log(`  - ${text}`);
    continue;
  }

  const { saltMass, saltVolume, shares, cautions } = answer;
  const grams = formatQuantity(saltMass, { unit: 'g', step: 1, rounding: 'up' });
  console.log(`  Weigh ${grams} of canning salt (about ${formatQuantity(saltVolume)}).`);
  if (shares.ofBrine !== undefined)
    console.log(`  The brine you pour on is ${(100 * shares.ofBrine).toFixed(1)} % salt.`);
  for (const { text } of cautions) console.log(`  - ${text}`);
}
