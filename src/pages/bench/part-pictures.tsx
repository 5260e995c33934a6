import { useWords } from '../../language/words.ts';
import type { BenchFinish } from '../../model/bench/set-up.ts';
import { listedCloth } from '../../model/bench/set-up.ts';
import type { WorkedBench } from '../../model/bench/work-bench.ts';
import { yarnDiameterMm } from '../../model/cloth/diameter.ts';
import { lengthArrayMm } from '../../model/length/statistics.ts';
import { clothPiecePicture, clothTimes, type DrawnCloth } from '../../scene/bench/cloth-piece.ts';
import { hangingClothPicture, overhangMm } from '../../scene/bench/hanging-cloth.ts';
import { fibresLaid, lengthArrayPicture } from '../../scene/bench/length-array.ts';
import type { Scale } from '../../scene/bench/true-scale.ts';
import { pieceMasses, unevenYarnPicture } from '../../scene/bench/uneven-yarn.ts';
import { sectionTimesOf, yarnSectionPicture } from '../../scene/bench/yarn-section.ts';
import type { InkName } from '../../style/inks.ts';
import { type AllReadings, readingOfOutcome } from '../../workings/bench/all-readings.ts';
import { cutWeighed, fibresDrawn, overhangDrawn, timesDrawn } from '../../workings/bench/picture-readings.ts';
import type { Theme } from '../preferences.ts';
import { BenchPicture } from './bench-picture.tsx';
import { benchWords } from './bench-words.ts';

export interface PicturesProps {
  readonly bench: WorkedBench;
  readonly side: string;
  readonly scale: Scale;
  readonly theme: Theme;
}

const none = {};

export function FibrePicture({ bench, side, scale, theme }: PicturesProps) {
  const { language } = useWords();
  const { pictures: said } = benchWords(language);
  return (
    <BenchPicture
      caption={said.array}
      numbers={none}
      file={`fiber-${side}`}
      theme={theme}
      on={[bench.fibre, scale.pxPerMm, scale.isMetric]}
      draw={(width) => lengthArrayPicture(lengthArrayMm(bench.fibre.lengths, fibresLaid(width)), width, scale)}
    />
  );
}

export function YarnPictures({
  bench,
  readings,
  side,
  scale,
  theme,
}: PicturesProps & { readonly readings: AllReadings }) {
  const { language } = useWords();
  const { pictures: said } = benchWords(language);
  const { warp, fibre } = bench;
  const { spinning, number, cvPercent } = warp;
  const cut = {
    fibresInSingle: spinning.verdict.fibresInSection,
    singles: number.singles,
    fibreMtex: fibre.linearDensityMtex,
    singleDiameterMm: yarnDiameterMm(number.singleTex),
  };
  const on = [warp, scale.pxPerMm, scale.isMetric];
  const { yarn } = spinning;
  const evenness = readingOfOutcome('evenness', readings);
  return (
    <>
      <BenchPicture
        caption={said.section}
        numbers={{
          times: timesDrawn('sectionTimes', cut.singleDiameterMm, sectionTimesOf(cut, scale.pxPerMm)),
          n: fibresDrawn(cut.fibresInSingle, cut.singles),
        }}
        file={`yarn-section-${side}`}
        theme={theme}
        on={on}
        draw={(width) => yarnSectionPicture(cut, width, scale)}
      />
      {yarn && cvPercent !== null ? (
        <BenchPicture
          caption={said.yarn}
          numbers={{ ...(evenness ? { cv: evenness } : {}), cut: cutWeighed }}
          note={said.yarnNote}
          file={`yarn-${side}`}
          theme={theme}
          on={on}
          draw={(width) =>
            unevenYarnPicture(
              pieceMasses(yarn.fibresInSection * number.singles, yarn.meanFibreLengthMm, cvPercent),
              yarnDiameterMm(number.resultantTex),
              width,
              scale,
            )
          }
        />
      ) : (
        <p>{said.none}</p>
      )}
    </>
  );
}

/** Threads as they look after each finish: along the cloth, across it. */
const finishInks: Readonly<Record<BenchFinish, readonly [InkName, InkName]>> = {
  grey: ['weldPale', 'calico'],
  scoured: ['muslin', 'calico'],
  mercerised: ['lint', 'fadedThin'],
  dyed: ['faded', 'fadedPale'],
  printed: ['lint', 'blush'],
};

/** A worked cloth as it is drawn. */
export function drawnCloth({ setUp, cloth, warp, weft }: WorkedBench): DrawnCloth {
  const { description } = cloth;
  const woven = description.kind === 'woven';
  return {
    structure: setUp.structure,
    endsPerInch: woven ? setUp.endsPerInch : description.walesPerInch,
    picksPerInch: woven ? setUp.picksPerInch : description.coursesPerInch,
    warpMm: yarnDiameterMm(warp.number.resultantTex),
    weftMm: yarnDiameterMm(weft.number.resultantTex),
    inks:
      setUp.finish === 'dyed' && listedCloth(setUp.cloth).dyedWarp ? ['indigoWarm', 'lint'] : finishInks[setUp.finish],
  };
}

export function ClothPictures({ bench, side, scale, theme }: PicturesProps) {
  const { language } = useWords();
  const { pictures: said } = benchWords(language);
  const drawn = drawnCloth(bench);
  const { description, drape } = bench.cloth;
  const on = [bench, scale.pxPerMm, scale.isMetric];
  const thicknessMm = description.kind === 'woven' ? description.thicknessMm : 2 * drawn.warpMm;
  return (
    <>
      <BenchPicture
        caption={said.cloth}
        numbers={{ times: timesDrawn('clothTimes', drawn.warpMm, clothTimes(drawn, scale.pxPerMm)) }}
        file={`cloth-${side}`}
        theme={theme}
        on={on}
        draw={(width) => clothPiecePicture(drawn, width, scale)}
      />
      <BenchPicture
        caption={said.overhang}
        numbers={{ length: overhangDrawn(overhangMm) }}
        file={`drape-${side}`}
        theme={theme}
        on={on}
        draw={(width) => hangingClothPicture(drape.bendingLengthMm, thicknessMm, width, scale)}
      />
    </>
  );
}
