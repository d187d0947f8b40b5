// What the form asks of a door stands in the kernel's table; here is what of a door's own size the pages draw.

const isPair = (door) => door.layout.endsWith("pair");
const leafWidth = (door) => Astragal.kernel.leaf_width(door);
const leafHeight = (door) => Astragal.kernel.leaf_height(door);
