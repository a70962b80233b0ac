/** The builds of every kind, as data. No body of one toy and no arithmetic lives here. */
import { type BodyKind, bodyKinds } from '../kinds';
import { babyDoll } from './baby-doll';
import { bigHeaded } from './big-headed';
import type { Build } from './build';
import { barrel, dog } from './four-legged';
import { longLimbed } from './long-limbed';
import { playDoll } from './play-doll';
import { plushBear } from './plush-bear';
import { ball, egg } from './round';

export type { Build } from './build';

export const builds: readonly Build[] = [plushBear, longLimbed, playDoll, babyDoll, bigHeaded, dog, barrel, ball, egg];

const byKind = new Map(bodyKinds.map((kind) => [kind, builds.filter((build) => build.kind === kind)]));

export const buildsOf = (kind: BodyKind): readonly Build[] => byKind.get(kind) ?? [];
