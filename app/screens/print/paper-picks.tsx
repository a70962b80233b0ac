import { papers } from '../../drafting/sheets';
import { Picks, useWords } from '../../parts';
import { PaperPicture } from './paper-picture';

type PaperPicksProps = {
  readonly paper: string;
  readonly halves: boolean;
  readonly onSet: (key: string, value: string | boolean) => void;
};

/** Which paper, and whether pieces that are alike left and right come in halves. */
export function PaperPicks({ paper, halves, onSet }: PaperPicksProps) {
  const { say } = useWords();
  return (
    <>
      <Picks
        legend={say('screen.print.paper')}
        chosen={paper}
        onPick={(chosen) => onSet('paper', chosen)}
        picks={Object.entries(papers).map(([id, size]) => ({
          value: id,
          words: say(`paper.${id}`),
          picture: <PaperPicture width={size.width} height={size.height} />,
        }))}
      />
      <Picks
        legend={say('screen.print.pieces')}
        chosen={halves ? 'halves' : 'whole'}
        onPick={(chosen) => onSet('halves', chosen === 'halves')}
        picks={(['halves', 'whole'] as const).map((value) => ({ value, words: say(`screen.print.${value}`) }))}
      />
    </>
  );
}
