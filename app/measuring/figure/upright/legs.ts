import { lerp, mirror, type Point, point, right, toward } from '../../../body/point';
import { across } from '../outline';
import { limb, oval, station } from '../shapes';
import { smoothPoints } from '../smooth';
import { closed, open, type Part } from '../stage';
import type { UprightForm } from './form';

/** The legs from the front or the back: what is drawn before the trunk, what after it, and where the table is. */
export function legsOf(form: UprightForm, seenFrom: 'front' | 'back') {
  const stands = form.traits.posture === 'stands';
  const axis = stands ? standing(form) : sitting(form);
  const outline = limb(axis, [form.legHalf * 1.1, form.legHalf, form.footHalf * 0.96]);
  const foot = axis.at(-1) ?? point(0, 0);
  const ground = stands ? foot.y + 8 + 0.72 * form.footHalf : foot.y + 1.15 * form.footHalf;
  const parts = legParts(form, outline, foot, ground);
  const places = placesOf(form, axis, outline);
  if (stands)
    return { under: [...parts.legs, ...toes(form, foot), ...parts.seam], over: [], axis, outline, ground, places };
  if (seenFrom === 'back') return { under: [...parts.legs, ...parts.seam], over: [], axis, outline, ground, places };
  return { under: [], over: [...parts.legs, ...parts.seam, ...soles(form, foot)], axis, outline, ground, places };
}

function legParts(form: UprightForm, outline: Point[], foot: Point, ground: number): { legs: Part[]; seam: Part[] } {
  const seam = [point(0, form.trunkHeight - 2), point(0, (form.trunkHeight + ground) / 2), point(0, ground - 3)];
  return {
    legs: [closed('leg', 'fur-deep', outline), closed('leg-left', 'fur-deep', outline.map(mirror))],
    seam: form.traits.legs === 'sewn' && foot.y > 0 ? [open('leg-seam', 'seam', seam)] : [],
  };
}

function placesOf(form: UprightForm, axis: readonly Point[], outline: readonly Point[]) {
  const dense = smoothPoints(outline, true);
  const thigh = station(axis, form.traits.posture === 'stands' ? 0.45 : 0.12);
  const inner = (t: number) => {
    const { at, toward: next } = station(axis, t);
    return lerp(across(dense, at, right(toward(at, next)))[1], at, 0.14);
  };
  return {
    thigh: thigh.at,
    thighToward: thigh.toward,
    insideTop: point(Math.max(inner(0.3).x * 0.3, 1), form.trunkHeight - 3),
    insideMiddle: inner(0.6),
    insideHem: inner(0.86),
  };
}

function standing({ traits, trunkHeight, hipHalf, legHalf, legLength }: UprightForm): Point[] {
  const x = traits.legs === 'sewn' ? legHalf * 0.96 : Math.max(0.52 * hipHalf, legHalf + 3);
  const top = trunkHeight - 16;
  return [point(x - 1, top), point(x, top + 0.5 * legLength), point(x, top + legLength)];
}

function sitting({ traits, trunkHeight, hipHalf, legHalf, legLength }: UprightForm): Point[] {
  const top = trunkHeight - 8;
  if (traits.legs === 'sewn') {
    return [point(0.96 * legHalf, top), point(0.97 * legHalf, top + 7), point(0.98 * legHalf, top + 14)];
  }
  const [root, foot] = [0.5 * hipHalf, 0.5 * hipHalf + 0.42 * legLength];
  return [point(root, top), point((root + foot) / 2 + 1, top + 6), point(foot, top + 11)];
}

function toes({ footHalf }: UprightForm, foot: Point): Part[] {
  const shape = oval(point(foot.x + 2, foot.y + 8), 1.24 * footHalf, 0.72 * footHalf);
  return [closed('foot', 'fur', shape), closed('foot-left', 'fur', shape.map(mirror))];
}

/** Feet turned to the viewer, each with its sole. */
function soles({ traits, footHalf }: UprightForm, foot: Point): Part[] {
  const [wide, tall] = [1.06 * footHalf, 1.18 * footHalf];
  const lean = traits.legs === 'sewn' ? 0 : 0.18;
  const sole = oval(foot, wide, tall, lean);
  const pad = oval(point(foot.x, foot.y + 2), 0.55 * wide, 0.52 * tall, lean);
  return [
    closed('foot', 'fur', sole),
    closed('foot-left', 'fur', sole.map(mirror)),
    closed('foot-pad', 'fur-pale', pad),
    closed('foot-pad', 'fur-pale', pad.map(mirror)),
  ];
}
