# SPDX-License-Identifier: MIT
# The rooms of the core, bottom first. A room may include only headers of rooms named here, and only of rooms above its own line.
room(units)                                                          # quantities, number text, Result
room(notebook USES units)                                            # what a finding is, how sentences are filled in
room(catalog  USES units notebook)                                   # species cards and how they are read
room(plan     USES units notebook catalog)                           # what the keeper decided
room(tank     USES units notebook catalog plan)                      # shapes, volumes, masses, heat, where pieces stand
room(edit     USES units notebook catalog plan tank)                 # commands, arranging pieces, undo
room(scape    USES units notebook catalog plan tank)                 # grid of the inside, clearance, lanes
room(water    USES units notebook catalog plan)                      # windows, water changes, carbonate system, ammonia, oxygen, salts, cycle
room(stocking USES units notebook catalog plan tank scape water)     # bodies, crowding, lanes, load
room(swim     USES units notebook catalog plan tank scape water stocking)  # fish that swim
room(search   USES units)                                             # which stock is best, of a problem in plain numbers
room(rules    USES units notebook catalog plan tank scape water stocking)  # one finding a file, and the table of rules
room(assess   USES units notebook catalog plan tank scape water stocking rules)
room(advice   USES units notebook catalog plan edit tank scape water stocking rules assess)
room(share    USES units notebook catalog plan edit tank scape water stocking search rules assess advice)  # JSON and links in and out
room(mend     USES units notebook catalog plan edit tank scape water stocking rules assess advice share)  # the least that puts a plan right
room(fill     USES units notebook catalog plan tank scape water stocking search rules assess advice share)  # which stocks fill a tank best
