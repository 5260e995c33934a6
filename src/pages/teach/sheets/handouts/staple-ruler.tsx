import { stapleChart } from '../../../../model/classing/staple-facts.ts';
import { MM_PER_INCH, THIRTY_SECONDS_PER_INCH } from '../../../../model/units.ts';
import type { HandoutWords } from './handout-words.ts';

const inches = 3;
/** Drawing units are millimeters, and so is the size on paper. */
const left = 4;
const width = inches * MM_PER_INCH + 2 * left;
const height = 40;
const inchEdge = 12;
const mmEdge = 30;

/** Length of an inch mark, mm: the fewer there are of a kind, the longer. */
function inchMark(place: number): number {
  if (place % THIRTY_SECONDS_PER_INCH === 0) return 8;
  if (place % (THIRTY_SECONDS_PER_INCH / 2) === 0) return 6.5;
  if (place % (THIRTY_SECONDS_PER_INCH / 4) === 0) return 5;
  return place % 2 === 0 ? 3.5 : 2.2;
}

/** A ruler of three inches and 76 mm in its actual size, with the staple codes where their lengths lie. */
export function StapleRuler({ words: { own } }: { readonly words: HandoutWords }) {
  const { fiber } = own;
  const at = (place: number) => left + (place / THIRTY_SECONDS_PER_INCH) * MM_PER_INCH;
  const inchMarks = Array.from({ length: inches * THIRTY_SECONDS_PER_INCH + 1 }, (_, place) => place);
  const mmMarks = Array.from({ length: Math.floor(inches * MM_PER_INCH) + 1 }, (_, mm) => mm);
  const codes = stapleChart.upland.rows.map(({ code32nds }) => code32nds).filter((code) => code % 4 === 0);
  return (
    <svg
      class="staple-ruler"
      role="img"
      aria-label={`${fiber.inches}, ${fiber.codes}, ${fiber.millimeters}`}
      viewBox={`0 0 ${width} ${height}`}
      width={`${width}mm`}
      height={`${height}mm`}
    >
      <path d={`M${left} ${inchEdge}H${width - left}V${mmEdge}H${left}Z`} class="ruler-edge" />
      {inchMarks.map((place) => (
        <path key={place} class="ruler-mark" d={`M${at(place)} ${inchEdge}v${inchMark(place)}`} />
      ))}
      {Array.from({ length: inches + 1 }, (_, inch) => (
        <text
          key={inch}
          class="ruler-great"
          x={at(inch * THIRTY_SECONDS_PER_INCH) + (inch === 0 ? 1.4 : -1)}
          y={23.4}
          text-anchor={inch === 0 ? 'start' : 'end'}
        >
          {inch}
        </text>
      ))}
      {codes.map((code) => (
        <g key={code}>
          <path class="ruler-mark" d={`M${at(code)} ${inchEdge}V6.4`} />
          <text class="ruler-code" x={at(code)} y={5.6}>
            {code}
          </text>
        </g>
      ))}
      <text class="ruler-words" x={left} y={2.8}>
        {fiber.codes}
      </text>
      <text class="ruler-words" x={left + 6} y={23.4}>
        {fiber.inches}
      </text>
      {mmMarks.map((mm) => (
        <path
          key={mm}
          class="ruler-mark"
          d={`M${left + mm} ${mmEdge}v${-(mm % 10 === 0 ? 5 : mm % 5 === 0 ? 3.8 : 2.4)}`}
        />
      ))}
      {mmMarks
        .filter((mm) => mm % 10 === 0)
        .map((mm) => (
          <text key={mm} class="ruler-code" x={left + mm} y={34}>
            {mm}
          </text>
        ))}
      <text class="ruler-words" x={left} y={38.6}>
        {fiber.millimeters}
      </text>
    </svg>
  );
}
