// What the page's modules hand each other. What the kernel and the catalog are is generated: Astragal.Door and the like.

declare namespace Astragal {
  // The names that the scripts let each other have.
  let page: Record<string, any>;
  // The files of the scripts, by the modules that they begin with: assets/catalog.js, as scripts name no file themselves.
  let late: Record<string, string>;
  // What this device keeps: scripts/kept.js, which every page has.
  let kept: Kept;
  // What prices are worked out from, as price.js brings it along; nothing where the showroom shows none in money.
  let prices: PriceStock | null;
  // A visit, packed, as the script of an example brings it along.
  let example: string | undefined;
  // How the showroom writes amounts, from the same place; nothing where it has no currency.
  let money: Money | null;
}

type View = "elevation" | "section" | "plan";
type ByView<Thing> = Record<View, Thing>;
type Drawings = ByView<Astragal.Drawing>;
type End = "open" | "closed";
// How the address follows: a new entry, the same one, once the hand rests, or not at all.
type Step = "push" | "replace" | "move" | "opened" | "none";

interface Extent { x0: number; x1: number; y0: number; y1: number }
interface Frame { x: number; y: number; width: number; height: number }
type Shift = { dx: number; dy: number };

// A door of one's own: its name, which no link has, and the link that opens it.
interface KeptDoor { id: string; name: string; link: string }
// A covering of the short list, and the link with its picks; empty where it was marked as it comes.
interface KeptMark { family: string; link: string }
interface Keeping { doors: KeptDoor[]; mine: string; marks: KeptMark[] }

interface Kept {
  nameMost: number;
  read(): Keeping;
  // Each returns whether this browser keeps it.
  change(task: (now: Keeping) => void): boolean;
  // A covering onto the short list with its link, or off it.
  turn(family: string, link: string): boolean;
  clear(): boolean;
  // Whenever this tab or another has changed it.
  follow(follower: () => void): void;
}

interface PageState extends Astragal.State {
  // Each length as its writer spelled it, and what is not (yet) a sound one, with the reason.
  typed: Record<string, { text: string; units: string; mm: number }>;
  drafts: Record<string, { text: string; why: string }>;
  // Whether the shelf is open to pick one that comes beside what is worked on.
  picking: boolean;
}

type Child = Node | string | null | undefined | false | Child[];
// Handlers under names such as "onclick".
type Attributes = Record<string, any>;

// A verdict's state, which is for machines, and what it is called.
interface Told { state: string; words: string }

interface PagePart {
  node: HTMLElement;
  // What takes its time may be awaited; nobody has to.
  update(state: PageState, settled: boolean): void | Promise<void>;
}

// One that is fetched; `here` waits until it has come.
interface LatePart extends PagePart { here(): Promise<void> }
interface DoorForm extends PagePart { chooser: HTMLDetailsElement }
interface TravelBar extends PagePart { focus(moves: string): void }
interface Switch { node: HTMLElement; show(value: string): void }
interface Undo {
  node: HTMLElement;
  // What was to be kept is not.
  refused(): void;
  // Until it no longer holds, or something else is done.
  offer(text: string, task: () => void, stillHolds?: () => boolean): void;
  update(): void;
}
interface Notice { node: HTMLElement; say(text: string): void; tell(opened: Astragal.Opened): void }

// Marks that one node draws; a layer that draws again compares them with those before.
interface Run { role: string; fade: number; shape: string; marks: Astragal.Mark[] }

interface ShownRun extends Run { attributes: Attributes; node: SVGElement }

interface Layer { group: SVGElement; draw(marks: Astragal.Mark[]): void }

interface Stage {
  node: HTMLElement;
  svg: SVGSVGElement;
  draw(state: PageState): void;
  // While something moves: what moves, in some of the views.
  move(state: PageState, views: View[]): void;
  show(view: string): void;
  focus(id: string): void;
  toSheet(): DOMMatrix;
}

// How the elevation is drawn in a light.
interface LightView {
  whole(draft: Astragal.Draft): Astragal.Drawing;
  still(draft: Astragal.Draft): Astragal.Mark[];
  moving(draft: Astragal.Draft, annotated: boolean): Astragal.Mark[];
  words(draft: Astragal.Draft): Astragal.Message[];
}

// The light that is chosen: its switch, and a part that says what is seen in it.
interface Lights extends PagePart {
  switch: HTMLElement;
  view(): LightView;
  // Whether the elevation is seen from outside, left and right exchanged.
  fromOutside(): boolean;
}

// Views laid out on one sheet.
interface SheetLayout { shifts: ByView<Shift>; boxes: ByView<Frame>; whole: Frame }

// The best picks of a family for what is wanted, and in words why it stands where it does.
interface Ranked { match: Astragal.Match; why: () => string }

// What may be asked as well once the drawing table has come.
interface TableAsker {
  drawings(one: Astragal.Configuration, place: Astragal.Position, units: string): Drawings;
  endDrawings(one: Astragal.Configuration, units: string): Drawings[];
  stillCounts(one: Astragal.Configuration, units: string): ByView<number>;
  movingMarks(views: View[], one: Astragal.Configuration, place: Astragal.Position, units: string, annotated: boolean): Astragal.Mark[][];
}

interface Asker extends TableAsker {
  // What an answer hangs on, as one text.
  key(one: Astragal.Configuration): string;
  doorKey(door: Astragal.Door): string;
  fit(one: Astragal.Configuration): Astragal.Fit;
  // As much of the answer as the drawings show.
  drawn(one: Astragal.Configuration): Astragal.Answer;
  draft(one: Astragal.Configuration, place: Astragal.Position, units: string): Astragal.Draft;
  // The same without names, for what has no title.
  movedDraft(one: Astragal.Configuration, place: Astragal.Position, units: string): Astragal.Draft;
  doorFront(one: Astragal.Configuration, units: string): Astragal.Mark[];
  coveringFront(one: Astragal.Configuration, place: Astragal.Position, units: string): Astragal.Mark[];
  sharesAt(one: Astragal.Configuration, place: Astragal.Position): Astragal.Shares | null;
}

interface Address {
  write(step: "push" | "replace"): void;
  fragment(): string;
  of(state: Astragal.State): string;
  read(fragment: string): Astragal.Opened;
  changes(opened: Astragal.Opened): Astragal.Difference[];
}

interface Store {
  get(): PageState;
  set(next: PageState, step: Step): void;
  follow(follower: (state: PageState, step: Step) => void): void;
}

interface Actions {
  state(): PageState;
  change(next: PageState, step: Step): void;
  family(): Astragal.Family;
  legs(): Astragal.Leg[];
  goToStep(step: string): void;
  // One covering of the shelf, at the position in which it stands there.
  openFamily(one: Astragal.Configuration): void;
  // How the coverings stand to what the client wants, best or not; none where she has not said.
  rank(ranked: Ranked[]): void;
  pickDoor(id: string): void;
  pickHandle(id: string): void;
  // A kept door, under the name that it has.
  takeDoor(one: Astragal.Configuration, name: string): void;
  pickUnits(units: string): void;
  pickFamily(id: string): void;
  pickOption(choice: string, option: string): void;
  // A change of the kernel's, such as one that mends something.
  make(change: Astragal.Change): void;
  move(leg: Astragal.Leg, value: number): void;
  moveTo(place: Astragal.Position): void;
  goTo(end: End): void;
  settle(): void;
  another(): void;
  // The shelf, to pick one that comes beside.
  pickAnother(): void;
  toComparison(): void;
  compareAll(coverings: Pick<Astragal.Configuration, "family" | "choices" | "wishes" | "place">[]): void;
  remove(index: number): void;
  show(index: number): void;
  open(fragment: string): Astragal.Opened;
}

// What may be asked as well once the door's form has come.
interface Measuring {
  setWord(id: string, value: string | number | boolean): void;
  typeLength(field: Astragal.Field, text: string): void;
  presetLength(field: Astragal.Field): void;
}

// The pages that a printer is given.
type Pages = (app: App, state: PageState) => HTMLElement[];

// The sheet for the client or the one for the workroom.
interface Paper {
  node: HTMLElement;
  kind(): string;
  choose(kind: string): void;
  ready(): Promise<void>;
  want(pages: Pages | null): void;
  fill(): void;
  empty(): void;
}

interface App extends Actions, Measuring {
  root: HTMLElement;
  catalog: Astragal.PageCatalog;
  ask: Asker;
  // Whether the page was opened without a link and without a kept door.
  fresh: boolean;
  stage: Stage;
  paper: Paper;
  // What stands over all the steps.
  toolbar: HTMLElement;
  notice: Notice;
  undo: Undo;
  address(): string;
  addressOf(state: Astragal.State): string;
  fragment(): string;
  // The fragment of one configuration.
  linkOf(one: Astragal.Configuration): string;
  // Once all parts of the step are there.
  whenShown(task: () => void): void;
  whenQuiet(key: string, task: () => void): void;
  // At once, but in a task of its own.
  inTurn(key: string, task: () => void): void;
  // Comes when all parts of the first step are there.
  standing: Promise<void>;
  dragging(): boolean;
  beginDrag(moves: string, view: View): void;
  endDrag(before: Astragal.Position): void;
  // The hand rests where it has moved something to.
  rest(moved: boolean): void;
  focusField(id: string): void;
  refuse(): void;
  // Fetches a later script, and says so where it cannot be had.
  fetched<Module>(module: Promise<Module>, then: (module: Module) => void): Promise<void>;
  print(pages?: Pages): Promise<void>;
}

// Whether what is written on this page is on the device: not yet, not as the device has no room or keeps nothing, or as
// somebody has taken it away.
type KeepState = "kept" | "writing" | "full" | "refused" | "gone";
// What has given way where two have written one visit.
interface GivenWay { path: string[]; stays: unknown; gives: unknown }

// Where visits are kept. Each promise fails where the device keeps nothing.
interface VisitStore {
  // The last changed first.
  all(): Promise<Astragal.Visit[]>;
  read(id: string): Promise<Astragal.Visit | null>;
  // In one go, so that nobody else writes between; nothing is kept where the task returns null.
  update(id: string, task: (found: Astragal.Visit | null) => Astragal.Visit | null): Promise<Astragal.Visit | null>;
  // Whenever another tab has written or taken away a visit.
  follow(follower: (id: string) => void): void;
}

interface VisitKeep {
  list(): Promise<Astragal.Visit[]>;
  // Those that are open on this page, kept or not.
  here(): Astragal.Visit[];
  open(id: string): Promise<Astragal.Visit | null>;
  // One that is open, as it is now.
  now(id: string): Astragal.Visit | null;
  state(id: string): KeepState;
  begin(visit: Astragal.Visit): Promise<void>;
  // The task changes a copy.
  change(id: string, task: (draft: Astragal.Visit) => void): void;
  // One that somebody else has taken away.
  keepAgain(id: string): Promise<void>;
  remove(id: string): Promise<void>;
  flush(): Promise<void>;
  follow(follower: (id: string, given: GivenWay[]) => void): void;
}

// The page of visits.
interface VisitPage {
  catalog: Astragal.PageCatalog;
  // Where the site stands in public, with a closing slash, or nothing.
  home: string;
  // The link of an opening, which its form has and its papers take from here.
  linkOf: typeof Astragal.kernel.opening_link;
  // The names of the showroom's example visits, and the addresses of their scripts.
  examples: string[];
  scripts: string[];
  keep: VisitKeep;
  // Something was done, and the way back.
  offer(text: string, task: (() => void) | null): void;
  show(id: string): void;
  showAll(): void;
  // An answer to proposals that the page was opened with, until it is shown.
  answer?: string;
  // The proposal that the configurator has just brought, until it is shown.
  brought?: string;
  // What has given way where a visit was written twice.
  tellGiven(id: string, given: GivenWay[]): void;
}

// A part of the form of a visit.
interface VisitPart {
  node: HTMLElement;
  update(visit: Astragal.Visit): void;
}
