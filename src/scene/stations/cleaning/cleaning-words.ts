import { textWidth } from '../../cloth/letter-widths.ts';
import { linesOf } from '../../cloth/lettering.ts';
import { patch } from '../../cloth/patch.ts';
import { type Box, rectangle } from '../../cloth/point.ts';
import { letter, type Slot, slip, tag } from '../../cloth/slot-words.ts';
import type { Mark } from '../../display-list.ts';
import type { CleaningInput } from './cleaning-input.ts';
import type { CleaningLayout } from './cleaning-layout.ts';

const slot = (box: Box, anchor: Slot['anchor'] = 'start', stands: Slot['stands'] = 'top'): Slot => ({
  ...box,
  anchor,
  stands,
});

const italic = { italic: true } as const;
const fits = (text: string, size: number, width: number, lines: number): boolean => {
  const broken = linesOf(text, size, width, italic);
  return broken.length <= lines && broken.every((line) => textWidth(line, size, italic) <= width);
};

/** All words of the scene: those that stay, and those that count with the work. */
export function cleaningWords(input: CleaningInput, layout: CleaningLayout): (progress: number) => Mark[] {
  const stay = [...machineNames(input, layout), ...stillTags(input, layout)];
  return (progress) => [...stay, ...counting(input, layout, progress)];
}

/** Names over the machines, where there is room; all of them are in the table. */
function machineNames(input: CleaningInput, { rows, works, small, phone, tall }: CleaningLayout): Mark[] {
  if (phone) return [];
  const tallest = small * 1.18 * 2 + 7;
  const named = rows.flatMap(({ machines }) =>
    machines.flatMap(({ machine, box, bandY }): Mark[] => {
      const width = box.width / 0.86 - 2;
      const inner = width - 14;
      if (!fits(machine.name, small, inner, 2)) return [];
      const x = box.x + box.width / 2 - width / 2;
      const top = machine.kind === 'suctionPipe' ? bandY - box.height * 0.29 : box.y;
      return slip(
        `cleaning/name/${machine.id}`,
        machine.name,
        slot({ x, y: top - tallest - (tall ? 2 : 1), width, height: tallest }, 'middle', 'bottom'),
        { size: small, italic: true },
      );
    }),
  );
  const { feeder, auger, way } = works;
  const line = small * 1.18 + 7;
  // On the side that the cotton comes from: a machine's name beside it.
  const beside = (id: string, text: string, edge: number, y: number): Mark[] => {
    const width = Math.min(170, way === 1 ? edge - 4 : input.size.width - edge - 4);
    if (!fits(text, small, width - 14, 1)) return [];
    const box = { x: way === 1 ? edge - width : edge, y, width, height: line };
    return slip(`cleaning/name/${id}`, text, slot(box, way === 1 ? 'end' : 'start'), { size: small, italic: true });
  };
  const side = (share: number) => (way === 1 ? feeder.x + feeder.width * share : feeder.x + feeder.width * (1 - share));
  return [
    ...named,
    ...beside('feeder', input.feeder.name, side(0.1), feeder.y + (tall ? feeder.height * 0.14 : 2)),
    ...(tall ? beside('distributor', input.distributor.name, side(-0.1), auger.y + auger.height + 5) : []),
  ];
}

function stillTags(input: CleaningInput, layout: CleaningLayout): Mark[] {
  const { slots, text, small, brief, tall } = layout;
  const { seedCotton, overflow } = input;
  return [
    ...tag(
      'cleaning/in',
      { text: brief ? input.labels.short.in : seedCotton.name, amount: seedCotton.amount(1) },
      slot(slots.in, 'start', tall ? 'top' : 'bottom'),
      text,
    ),
    ...slip('cleaning/overflow', `${overflow.name} ${overflow.amount}`, slot(slots.overflow, 'middle', 'middle'), {
      size: small,
      bold: true,
    }),
    ...outShare(input, layout),
  ];
}

function counting(input: CleaningInput, layout: CleaningLayout, progress: number): Mark[] {
  const { slots, text, small, brief, tall, lipTall, rows, works } = layout;
  const { evaporated, trash, cleaned } = input;
  const { short } = input.labels;
  const amounts =
    lipTall === 0
      ? []
      : rows.flatMap(({ machines }) =>
          machines.flatMap(({ machine, compartment }): Mark[] => {
            if (!machine.took || !compartment) return [];
            const said = machine.took.amount(progress);
            if (textWidth(said, small, { bold: true }) > compartment.width) return [];
            return letter(
              said,
              slot(
                { ...compartment, y: compartment.y + compartment.height - lipTall, height: lipTall },
                'middle',
                'middle',
              ),
              { size: small, bold: true, ink: 'lint' },
            );
          }),
        );
  const feederTook = input.feeder.took.amount(progress);
  const vapourName = brief ? short.evaporated : evaporated?.name;
  const vapour = evaporated ? `${vapourName} ${evaporated.amount(progress)}` : '';
  return [
    ...amounts,
    ...(textWidth(feederTook, small, { bold: true }) > works.pocket.width + 20
      ? []
      : slip(
          'cleaning/feederTook',
          feederTook,
          slot(
            {
              x: works.pocket.x - 6,
              y: works.pocket.y - small * 1.5 - 6,
              width: works.pocket.width + 12,
              height: small * 1.5 + 4,
            },
            'middle',
            'bottom',
          ),
          { size: small, bold: true },
        )),
    ...(evaporated
      ? tall
        ? slip('cleaning/evaporated', vapour, slot(slots.evaporated, 'start', 'middle'), { size: small, bold: true })
        : tag(
            'cleaning/evaporated',
            { text: short.evaporated, amount: evaporated.amount(progress) },
            slot(slots.evaporated, 'end'),
            small,
          )
      : []),
    ...tag(
      'cleaning/trash',
      { text: brief ? short.trash : trash.name, amount: trash.amount(progress) },
      slot(slots.trash, 'start', 'middle'),
      text,
    ),
    ...tag(
      'cleaning/cleaned',
      { text: brief ? short.cleaned : cleaned.name, amount: cleaned.amount(progress) },
      slot(slots.cleaned, works.way === 1 ? 'end' : 'start', 'bottom'),
      text,
    ),
  ];
}

/** The share of the trash that is out, large, over what it is a share of. */
function outShare({ labels }: CleaningInput, { slots: { share }, small }: CleaningLayout): Mark[] {
  if (!share) return [];
  const big = Math.min(share.height * 0.42, small * 2.3);
  return [
    patch('cleaning/share', rectangle(share.x - 7, share.y - 2, share.width + 4, share.height + 4), 'muslin', {
      shadow: 1.2,
      seam: 0,
      grain: null,
      scissors: { miss: 0.9, snip: 60, bow: 0.004 },
    }),
    ...letter(labels.outShare, slot({ ...share, height: big * 1.2 }), { size: big, display: true, ink: 'madder' }),
    ...letter(labels.outWords, slot({ ...share, y: share.y + big * 1.15, height: share.height - big * 1.15 }), {
      size: small,
    }),
  ];
}
