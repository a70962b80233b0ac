import type { ComponentChildren } from 'preact';
import type { Say } from '../body';
import type { Diagram, Figure, Frame, Label, Layer, Strip, Tape } from '../measuring';
import './figure.css';
import './figure-contrast.css';

/** How a tape, a ruler and a pencil line differ: one class for the whole. */
const STUFF = { girth: 'cloth', surface: 'cloth', straight: 'ruler', wish: 'pencil' } as const;

/** So far a word stays from the edge of its picture. */
const WORD_FROM_EDGE = 3;

/** One measuring step as a picture; its text equivalent is read in its place. */
export function DiagramPicture({ diagram, say }: { readonly diagram: Diagram; readonly say: Say }) {
  const { figure, tape } = diagram;
  return (
    <Picture
      frame={figure.frame}
      text={say('list.after', { one: say(`figure.seen.${tape.view}`), two: say(`figure.tape.${tape.text}`) })}
    >
      <Shapes figure={figure} layers={['toy', 'marks']} />
      <Strips tape={tape} />
      <Shapes figure={figure} layers={['over']} />
      <Ends tape={tape} frame={figure.frame} say={say} />
    </Picture>
  );
}

/** A toy alone. Without `text` it only decorates the words beside it. */
export function FigurePicture({ figure, text }: { readonly figure: Figure; readonly text?: string }) {
  return (
    <Picture frame={figure.frame} text={text}>
      <Shapes figure={figure} layers={['toy', 'over', 'marks']} />
    </Picture>
  );
}

type PictureProps = {
  readonly frame: Frame;
  readonly text: string | undefined;
  readonly children: ComponentChildren;
};

export function Picture({ frame, text, children }: PictureProps) {
  const viewBox = `0 0 ${frame.width} ${frame.height}`;
  if (text === undefined) {
    return (
      <svg class="toy-figure" viewBox={viewBox} aria-hidden="true">
        {children}
      </svg>
    );
  }
  return (
    <svg class="toy-figure" viewBox={viewBox} role="img" aria-label={text}>
      {children}
    </svg>
  );
}

type ShapesProps = { readonly figure: Figure; readonly layers: readonly Layer[] };

export function Shapes({ figure, layers }: ShapesProps) {
  const shown = figure.shapes.filter(({ layer }) => layers.includes(layer));
  return (
    <g>
      {shown.map(({ look, path }) => (
        <path key={path} class={`toy-${look}`} d={path} />
      ))}
    </g>
  );
}

/** The tape itself, what helps to see where it lies, and the one movement along it. */
export function Strips({ tape }: { readonly tape: Tape }) {
  return (
    <g class={`laid laid-${STUFF[tape.nature]}`}>
      {tape.guides.map((path) => (
        <Seen key={path} look="laid-guide" path={path} />
      ))}
      {tape.hidden.map((strip) => (
        <path key={strip.outline} class="laid-hidden" d={tape.nature === 'wish' ? strip.middle : strip.outline} />
      ))}
      {tape.visible.map((strip) => (
        <StripDrawing key={strip.outline} strip={strip} />
      ))}
      <path class="laid-run" d={tape.way} pathLength="100" />
    </g>
  );
}

/** Where to begin and where to read, above everything else. */
function Ends({ tape, frame, say }: { readonly tape: Tape; readonly frame: Frame; readonly say: Say }) {
  const roomOf = ({ anchor, at }: Label) => (anchor === 'end' ? at.x : frame.width - at.x) - WORD_FROM_EDGE;
  return (
    <g>
      {tape.labels.map((label) => (
        <LabelDrawing key={label.word} label={label} text={say(`figure.${label.word}`)} room={roomOf(label)} />
      ))}
      <circle class="laid-start" cx={tape.start.x} cy={tape.start.y} r={tape.dot} />
      <path class="laid-end" d={tape.arrow} />
    </g>
  );
}

function StripDrawing({ strip }: { readonly strip: Strip }) {
  return (
    <g>
      <path class="laid-strip" d={strip.outline} />
      <path class="laid-ticks" d={strip.ticks} />
      <path class="laid-middle" d={strip.middle} />
    </g>
  );
}

type LabelProps = { readonly label: Label; readonly text: string; readonly room: number };

/** A word at its leader; one wider than its room is set narrower, whatever the letters of this device. */
function LabelDrawing({ label, text, room }: LabelProps) {
  const narrow = (word: SVGTextElement | null) => {
    word?.removeAttribute('textLength');
    if (word && word.getBBox().width > room) word.setAttribute('textLength', String(room));
  };
  return (
    <g>
      <Seen look="laid-leader" path={label.leader} />
      <text
        ref={narrow}
        class={`laid-word laid-word-${label.anchor}`}
        x={label.at.x}
        y={label.at.y}
        lengthAdjust="spacingAndGlyphs"
      >
        {text}
      </text>
    </g>
  );
}

/** A thin line that is seen on fur and on paper alike: the paper's colour under it. */
function Seen({ look, path }: { readonly look: string; readonly path: string }) {
  return (
    <g>
      <path class="laid-under" d={path} />
      <path class={look} d={path} />
    </g>
  );
}
