/** How long do I blanch it, in how much water, and how much ice do I need? Invented: a kitchen at 5,300 ft. */
import { blanching, formatQuantity, sources } from 'stillroom';

const elevation = '5,300 ft';
const asked = [
  { food: 'broccoli', form: 'large florets', ready: '12 lb', elevation },
  { food: 'broccoli', form: 'large florets', ready: '12 lb', elevation, blanchIn: 'steam' },
  { food: 'cucumbers', ready: '3 lb', elevation },
];

for (const question of asked) {
  const { food, form, ready, blanchIn } = question;
  console.log(
    `${ready} of ${food}${form === undefined ? '' : `, ${form}`}${blanchIn === undefined ? '' : `, in ${blanchIn}`}`,
  );

  const answer = blanching(question);
  if (!answer.known) {
    console.log(`  No time: ${answer.reason.text}`);
    for (const { text } of answer.instead) console.log(`  - ${text}`);
    continue;
  }

  const { minutes, coolingMinutes, waterVolume, ice, otherSource, basis } = answer;
  const span = ({ low, high }) => `${low === high ? low : `${low} to ${high}`} minutes`;
  console.log(`  ${span(minutes)} in ${answer.blanchIn}, then ${span(coolingMinutes)} in ice water.`);
  if (waterVolume !== undefined)
    console.log(
      `  ${formatQuantity(waterVolume)} of boiling water for all of it, in as many batches as your pot takes.`,
    );
  console.log(`  ${formatQuantity(ice, { rounding: 'up' })} of ice.`);
  if (otherSource !== undefined) console.log(`  Another guide says ${span(otherSource.minutes)}.`);
  const [line] = basis.filter(({ of }) => of === 'minutes');
  console.log(`  Source: ${sources({ ids: [line.source] })[0].title}, ${line.locator}`);
}
