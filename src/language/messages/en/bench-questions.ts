/** A prepared question of the bench: what is asked, the short answer, why, and what it does not say. */
export interface BenchQuestionWords {
  readonly name: string;
  readonly answer: string;
  readonly why: readonly string[];
}

export const benchQuestions = {
  heading: 'Questions to start from',
  why: 'Why',
  rests: 'What it rests on',
  close: 'Close the answer',
  threads: {
    single: 'One yarn of Ne 50, tex',
    two: '50/2: two of them plied, tex',
    three: '50/3: three of them plied, tex',
    metric: '50 km to the kilogram, tex',
  } as Readonly<Record<string, string>>,
  pilling: {
    name: 'Does a longer staple help against pilling and fraying?',
    answer: 'Against pilling, yes. Against fraying, not by itself.',
    why: [
      'Pills start where a fiber ends. A longer fiber has fewer ends in the same length of yarn, and the second bench counts them.',
      'Fraying is another matter: a cut edge frays by how close the threads are set, how hard they are twisted and how the cloth is finished. That is common practice, not a number of ours.',
    ],
  } as BenchQuestionWords,
  lawn: {
    name: 'Why does lawn cost more than muslin?',
    answer: 'Lawn takes less cotton, but finer and longer cotton, and far more work.',
    why: [
      'A yarn this fine holds too few fibers for a carded yarn: the limit of fibers side by side binds. So the lint is combed, the short fibers are taken out as noil, and a longer cotton is bought.',
      'Fine yarn takes more turns in every inch, and more inches of yarn go into a yard: each spindle turns longer for it.',
    ],
  } as BenchQuestionWords,
  thread: {
    name: 'What is 50-weight thread really?',
    answer: 'It depends on the maker: the same number stands on threads that differ more than twofold.',
    why: [
      'A cotton count says how many hanks of one single weigh a pound. The plies divide it: three plied together are as thick as one single of a third of the count.',
      'Other makers mean kilometers of the whole thread in a kilogram. Two readings are in use, from memory; ask for the tex, which has one meaning only.',
    ],
  } as BenchQuestionWords,
  flannel: {
    name: 'Why did my flannel shrink?',
    answer: 'Its threads lie far apart and soft. In the wash they draw together and crimp more; nothing is lost.',
    why: [
      'On the loom the yarn is held straighter than it wants to lie. Water lets it go: the crimp rises, the cloth grows shorter and heavier, and the yarn keeps its length.',
      'An open, softly twisted cloth has room to draw in. Close quilting cotton has less. Buy a little more, and wash it before it is cut.',
    ],
  } as BenchQuestionWords,
};
