import { textWidth } from '../../cloth/letter-widths.ts';
import { linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle, ring } from '../../cloth/point.ts';
import { letter, type Slot, slip, tag } from '../../cloth/slot-words.ts';
import type { Mark } from '../../display-list.ts';
import { pressedBales } from './bale-yard.ts';
import type { PressingInput } from './pressing-input.ts';
import type { PressingLayout } from './pressing-layout.ts';

const slot = (box: Box, anchor: Slot['anchor'] = 'start', stands: Slot['stands'] = 'top'): Slot => ({
  ...box,
  anchor,
  stands,
});

/** Room that a line of words takes on the wide side, px. */
const roomOf = (text: string, size: number): number => textWidth(text, size, { bold: true });

/** All words of the scene: those that stay, and those that count with the work. */
export function pressingWords(input: PressingInput, layout: PressingLayout): (progress: number) => Mark[] {
  const stay = [
    ...names(input, layout),
    ...stillTags(input, layout),
    ...weightWords(input, layout),
    ...cardCloth(layout),
  ];
  return (progress) => [...stay, ...cardWords(input, layout, progress), ...counting(input, layout, progress)];
}

function names({ labels }: PressingInput, { slots, small, phone }: PressingLayout): Mark[] {
  if (phone) return [];
  return (['tramper', 'ram'] as const).flatMap((part) => {
    const box = slots[`${part}Name`];
    if (roomOf(labels[part], small) > box.width - 14) return [];
    return slip(`pressing/name/${part}`, labels[part], slot(box, part === 'ram' ? 'middle' : 'end', 'bottom'), {
      size: small,
      italic: true,
    });
  });
}

function stillTags({ labels, lint, water }: PressingInput, { slots, text, tall, phone }: PressingLayout): Mark[] {
  const brief = !tall || phone;
  return [
    ...tag('pressing/in', { text: brief ? labels.short.in : lint.name, amount: lint.amount(1) }, slot(slots.in), text),
    ...(water && phone
      ? slip('pressing/water', `${labels.short.water} ${water.amount(1)}`, slot(slots.water), {
          size: text,
          bold: true,
        })
      : []),
    ...(water && !phone
      ? tag(
          'pressing/water',
          { text: brief ? labels.short.water : water.name, amount: water.amount(1) },
          slot(slots.water),
          text,
        )
      : []),
  ];
}

/** Over the ruler: what its knots are, and what its notch is. */
function weightWords({ labels }: PressingInput, { weights, small }: PressingLayout): Mark[] {
  if (!weights) return [];
  const line = small * 1.18 + 1;
  return [
    ...letter(labels.weights, slot({ ...weights, height: line }), { size: small, bold: true }),
    ...letter(labels.wanted, slot({ ...weights, y: weights.y + line, height: line }), { size: small, italic: true }),
  ];
}

/** A card hung on one bale. */
function cardCloth({ card: { x, y, width, height } }: PressingLayout): Mark[] {
  return [
    patch('pressing/card', rectangle(x, y, width, height), 'muslin', {
      shadow: 4,
      seam: 4.5,
      thread: 'mid',
      threadWidth: 1.3,
      stitchery: { on: 6, off: 5 },
      scissors: { miss: 1.4, snip: 80 },
    }),
    patch('pressing/card/eye', ring(x + width / 2, y + 4, 3.6, 8), 'madder', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: 'asDrawn',
    }),
  ];
}

/** One bale's worth as far as it is pressed; under it the mean bale of the field, as many lines as there is room for. */
function cardWords({ labels, pressed }: PressingInput, { card, small }: PressingLayout, progress: number): Mark[] {
  const inner: Box = { x: card.x + 9, y: card.y + 10, width: card.width - 18, height: card.height - 18 };
  const big = small * 1.25;
  const said = pressed.amount(progress);
  const heading = (text: string) =>
    Math.min(2, linesOf(text, small, inner.width, { italic: true }).length) * small * 1.18 + 1;
  const [worthTall, meanTall] = [heading(labels.worth), heading(labels.mean)];
  const left = inner.height - worthTall - big * 1.3 - meanTall;
  const shown = labels.card
    .filter(({ name, value }) => textWidth(name, small) + textWidth(value, small, { bold: true }) + 6 <= inner.width)
    .slice(0, Math.max(0, Math.floor(left / (small * 1.2))));
  const pitch = Math.min(left / Math.max(1, shown.length), small * 2.4);
  const meanY = inner.y + worthTall + big * 1.3;
  const across = (y: number, height: number): Box => ({ ...inner, y, height });
  const italic = { size: small, italic: true, ink: 'walnut' } as const;
  const pressedWide = textWidth(said, big, { bold: true });
  return [
    ...letter(labels.worth, slot(across(inner.y, worthTall)), italic),
    ...(textWidth(labels.pressed, small) + pressedWide + 6 <= inner.width
      ? letter(labels.pressed, slot(across(inner.y + worthTall, big * 1.25), 'start', 'middle'), { size: small })
      : []),
    ...letter(said, slot(across(inner.y + worthTall, big * 1.25), 'end', 'middle'), { size: big, bold: true }),
    ...letter(labels.mean, slot(across(meanY, meanTall)), italic),
    ...shown.flatMap(({ name, value }, i): Mark[] => {
      const line = across(meanY + meanTall + pitch * i, pitch);
      return [
        ...letter(name, slot(line, 'start', 'middle'), { size: small }),
        ...letter(value, slot(line, 'end', 'middle'), { size: small, bold: true }),
      ];
    }),
  ];
}

function counting(input: PressingInput, { slots, text, small, phone }: PressingLayout, progress: number): Mark[] {
  const { labels, bales } = input;
  const done = pressedBales(bales, progress);
  const { count } = slots;
  const at = Math.min(bales.length - 1, done);
  const mark = labels.markOf(done === bales.length ? bales.length - 1 : at);
  const of = labels.remnant === '' ? labels.countOf : labels.remnant;
  const under = linesOf(of, small, count.width).length * small * 1.18 + 2;
  const big = Math.min((count.height - under) / 1.2, text * (phone ? 1.6 : 2.2));
  return [
    ...letter(labels.count(done), slot({ ...count, height: big * 1.2 }), { size: big, display: true, ink: 'ink' }),
    ...letter(of, slot({ ...count, y: count.y + big * 1.2, height: under }), { size: small }),
    ...(roomOf(mark, small) + 12 <= slots.mark.width
      ? slip('pressing/mark', mark, slot(slots.mark, 'middle', 'middle'), { size: small, bold: true })
      : []),
  ];
}
