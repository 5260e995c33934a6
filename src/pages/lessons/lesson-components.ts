import { figures } from './figures/all-figures.ts';
import { AtHome } from './parts/at-home.tsx';
import { Measure } from './parts/measure.tsx';
import { Num } from './parts/num.tsx';
import { Prediction } from './parts/prediction.tsx';
import { Quiz } from './parts/quiz.tsx';
import { Sources } from './parts/sources.tsx';
import { Term } from './parts/term.tsx';

/** Everything a lesson file may use. */
export const lessonComponents = { ...figures, AtHome, Measure, Num, Prediction, Quiz, Sources, Term };
