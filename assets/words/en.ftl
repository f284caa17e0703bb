# English. Sentences only; what they say is computed elsewhere.

## Names

place-customer = the customer
place-load-center = the load center
place-in-line-box = the box in the line
place-junction-box = the heater’s junction box
place-heater-top = the top of the heater
place-upper-compartment = the upper compartment
place-lower-compartment = the lower compartment
place-relief = the relief valve
place-drain = the drain and the floor
place-taps = the taps
place-van = the van

heater-short-30 = 30 gal short, 3500 W, 240 V
heater-plain-40 = 40 gal, 4500 W, 240 V
heater-tall-50-208 = 50 gal tall, 4500 W, 208 V
heater-wide-80 = 80 gal, 5500 W, 240 V
heater-small-20 = 20 gal, one element, 1500 W, 120 V
heater-tall-50-277 = 50 gal tall, 4500 W, 277 V
heater-both-50 = 50 gal, both elements at once, 4500 W each, 240 V
heater-off-peak-80 = 80 gal, lower element off-peak, 4500 W, 240 V
heater-board-50 = 50 gal, electronic control, 4500 W, 240 V
heater-large-120 = 120 gal, 5500 W, 240 V

household-single = one person
household-couple = a couple
household-family = a family of four
household-full-house = three generations
household-shifts = one person on shifts
household-retired = a retired couple
household-teenagers = a family with teenagers
household-new-baby = a couple with a new baby
household-hairdresser = a hairdresser at home
household-farm = a farm
household-cabin = a weekend cabin
household-rooms = rented rooms
household-tub-lover = somebody who loves the tub
household-small-laundry = a small laundry

climate-north-ridge = North Ridge (cold)
climate-mill-valley = Mill Valley (four seasons)
climate-harbor-bend = Harbor Bend (mild)
climate-salt-flat = Salt Flat (hot and dry)
climate-frost-landing = Frost Landing (deep frost)
climate-lofty-basin = Lofty Basin (mountain basin)
climate-copper-plain = Copper Plain (dry, sharp winters)
climate-ember-wells = Ember Wells (desert)
climate-mangrove-point = Mangrove Point (hot and damp)
climate-cotton-bayou = Cotton Bayou (damp summers)

location-basement = in the basement
location-closet = in a closet
location-garage = in the garage
location-attic = in the attic, in a pan
location-outdoors = outdoors, in a cabinet

level-upper = upper
level-lower = lower

tap-laundry = laundry tub
tap-kitchen = kitchen tap
tap-bath = bathtub
tap-shower = shower

circuit-heater = Water heater
circuit-second-source = Load control
circuit-off-peak = Water heater, off-peak
circuit-range = Range
circuit-dryer = Dryer

metal-copper = copper
metal-aluminium = aluminium
anode-magnesium = magnesium
anode-aluminium-zinc = aluminium with zinc
side-hot = hot
side-cold = cold

box-fused-switch = A fused switch
box-timer = A timer
box-utility-relay = The utility’s relay

stab-leg-1 = leg 1
stab-leg-2 = leg 2

handle-on = on
handle-off = off
handle-tripped = tripped

cover-panel-front = front of the load center
cover-junction-box = lid of the junction box
cover-box-door = door of the box in the line
cover-upper = upper cover
cover-lower = lower cover
cover-upper-insulation = upper insulation
cover-lower-insulation = lower insulation
cover-upper-shield = upper shield
cover-lower-shield = lower shield

fitting-upper-element = upper element’s flange
fitting-lower-element = lower element’s flange
fitting-nipples = nipples on top
fitting-drain-valve = drain valve
fitting-relief-valve = relief valve
fitting-bottom-rim = bottom rim of the jacket

writing-plate = the rating plate
writing-diagram = the wiring diagram
writing-stamp-upper = the stamp on the upper element
writing-stamp-lower = the stamp on the lower element
writing-directory = the load center’s directory
writing-dials = both dials

meter-volts = Volts AC
meter-low-volts = Volts AC, low impedance
meter-ohms = Ohms
meter-continuity = Continuity
meter-insulation = Insulation, 500 V
meter-amps = Amperes AC through the meter

source-receptacle = the receptacle on another circuit
source-proving-unit = the proving unit

screw-shell = shell
screw-pipe = cold pipe
screw-N = neutral bar
screw-G = ground bar

wire-cable-a = branch cable, leg 1
wire-cable-b = branch cable, leg 2 (re-identified white)
wire-cable-n = branch cable, neutral
wire-cable-g = equipment ground
wire-second-a = second cable, leg 1
wire-second-b = second cable, leg 2
wire-off-peak-a = off-peak cable, leg 1
wire-off-peak-b = off-peak cable, leg 2
wire-to-box-a = cable to the box, leg 1
wire-to-box-b = cable to the box, leg 2
wire-whip-a = cable from the box, leg 1
wire-whip-b = cable from the box, leg 2
wire-feed-a = lead to H1
wire-feed-b = lead to H3
wire-bond = bond to the shell
wire-strap = strap H2 to U1
wire-upper-switched = wire U2 to UEa
wire-upper-permanent = wire H4 to UEb
wire-transfer = wire U4 to D1
wire-lower-switched = wire D2 to LEa
wire-lower-permanent = wire H4 to LEb
wire-lower-feed = wire H2 to D1
wire-off-peak-feed-a = lead to H5
wire-off-peak-feed-b = lead to H7
wire-interlock = wire H6 to U3
wire-off-peak-permanent = wire H8 to LEb
wire-board-line = wire H2 to K1
wire-board-return = wire H4 to K2
wire-board-upper = wire K3 to UEa
wire-board-lower = wire K4 to LEa
wire-end = { $wire }, at { $screw }

part-upper-element = upper element
part-lower-element = lower element
part-upper-thermostat = upper thermostat
part-lower-thermostat = lower thermostat
part-limit = high limit
part-breaker = two-pole breaker
part-fuse = pair of fuses
part-time-switch = time switch
part-connectors = connectors for aluminium and copper
part-dip-tube = dip tube
part-upper-gasket = gasket of the upper element
part-lower-gasket = gasket of the lower element
part-relief-valve = relief valve
part-expansion-tank = expansion tank
part-upper-sensor = upper sensor
part-lower-sensor = lower sensor
part-board = control board
part-regulator = pressure regulator
part-mixing-valve = mixing valve
part-cartridge = fixture cartridge
part-anode = anode rod
part-drain-valve = drain valve
part-nipples = nipples and unions
part-connections = connections, each on its own nipple
part-hot-line = length of hot line
part-pipe-clips = padded pipe clips
part-return-check = check valve of the recirculation loop
part-pump-timer = timer of the recirculation pump
part-heater = whole heater
part-with = { $part } ({ $detail })

fault-F01 = Lower element open
fault-F02 = Upper element open
fault-F03 = Tank shell corroded through
fault-F04 = Demand beyond what the heater can make
fault-F05 = Upper thermostat welded closed
fault-F06 = Lower thermostat welded closed
fault-F07 = Limit that trips far below its rating
fault-F08 = Limit tripped, cause gone
fault-F09 = One pole of the limit burnt open
fault-F10 = Upper thermostat does not transfer
fault-F11 = Upper thermostat does not feed the upper element
fault-F12 = Lower thermostat open
fault-F13 = Lower element grounded in the middle of its coil
fault-F14 = Element grounded near one end
fault-F15 = Turns of an element’s coil shorted
fault-F16 = Upper element fired dry
fault-F17 = Upper element dry-fired at a refill, failed since
fault-F18 = Breaker off or tripped, nothing behind it
fault-F19 = One pole of the breaker does not make
fault-F20 = Breaker tired, or a hot lug on it
fault-F21 = One fuse of the switch in the line is open
fault-F22 = One leg of the service lost
fault-F23 = Burnt splice in the junction box
fault-F24 = Burnt screw at the lower thermostat
fault-F25 = Aluminium cable in connectors for copper
fault-F26 = The timer in the line keeps the heater off
fault-F27 = 240 V heater on a 208 V supply
fault-F28 = Both poles of the breaker on one leg
fault-F29 = Element of another power than the plate’s
fault-F30 = Lower thermostat fed from U2 instead of U4
fault-F31 = Equipment ground off, and an element leaks
fault-F33 = Thermostat not lying flat on the shell
fault-F34 = Dials set too low
fault-F35 = Dials set too high
fault-F36 = Dials set unequal
fault-F37 = Dip tube broken or missing
fault-F38 = Cold water crossing over in one fixture
fault-F39 = Mixing valve seized too cold
fault-F40 = Hot and cold connections swapped
fault-F41 = Sediment over the bottom, lower element crusted
fault-F42 = Water coming in colder than usual
fault-F43 = Hot line leaking out of sight
fault-F44 = Recirculation loop that never rests
fault-F45 = No expansion control in a closed system
fault-F46 = Pressure regulator holding nothing back
fault-F47 = Relief valve’s seat fouled
fault-F48 = Limit and upper thermostat both welded
fault-F49 = Expansion tank waterlogged
fault-F50 = Element gasket leaks
fault-F51 = Drain valve dripping
fault-F52 = Nipple corroded through
fault-F53 = Condensation: damp air on cold metal
fault-F54 = Bacteria on a magnesium anode: hot water smells of rotten eggs
fault-F55 = Anode spent and shell rusting: brown hot water
fault-F56 = Anode spent, nothing felt of it yet
fault-F57 = Hot pipe ticking in its straps
fault-F58 = Heat trap stuck in the outlet nipple
fault-F60 = Thermistor open or shorted
fault-F61 = Relay of the board stuck or dead
fault-F62 = Board locked out: it saw no water over the element
fault-F64 = Nothing but a misleading measurement: ghost volts
fault-F65 = Neutral of the heater open
fault-F66 = 240 V heater fed with 120 V
fault-F67 = Both elements open
fault-F68 = Wires of U2 and U4 swapped
fault-F69 = Wrong breaker off: the directory is wrong
fault-F70 = Limit off the shell behind a thermostat that runs away
fault-F71 = Hot joint beside the limit
fault-F72 = Thermostat that closes far too late
fault-F73 = Service neutral loose
fault-F74 = One fixture’s limit stop letting cold in
fault-F75 = Soft leak of an element’s insulation
fault-none = Nothing is wrong

remedy-F01 = Change the lower element for one that matches the plate, with a new gasket.
remedy-F02 = Change the upper element for one that matches the plate, with a new gasket.
remedy-F03 = Replace the heater: a tank that has rusted through cannot be mended.
remedy-F04 = Nothing to change. Explain, and advise a larger heater, a second one, or less flow.
remedy-F05 = Change the upper thermostat, then prove that the limit opens both legs.
remedy-F06 = Change the lower thermostat, then prove that the limit opens both legs.
remedy-F07 = Change the limit, then watch one whole cycle to the cut-out.
remedy-F08 = Find no cause left, let it cool, press the button, and watch one whole cycle to the cut-out.
remedy-F09 = Change the limit.
remedy-F10 = Change the upper thermostat.
remedy-F11 = Change the upper thermostat.
remedy-F12 = Change the lower thermostat.
remedy-F13 = Change the lower element for one that matches the plate, with a new gasket.
remedy-F14 = Change the grounded element for one that matches the plate, with a new gasket.
remedy-F15 = Change the element for one that matches the plate, with a new gasket.
remedy-F16 = Change the upper element, and refill fully before power.
remedy-F17 = Change the upper element for one that matches the plate, with a new gasket; refill before power.
remedy-F18 = Prove the elements clear of the shell, close the breaker once, clamp both legs and watch.
remedy-F19 = Change the breaker. That is work inside the load center.
remedy-F20 = Make the hot lug again, or change the breaker for one of its rating. That is work inside the load center.
remedy-F21 = Change both fuses for the plate’s rating, find what melted one, and clamp both legs.
remedy-F22 = Nothing to change here. Lock the heater off and call the utility at once.
remedy-F23 = Cut the splice back to bright copper and make it again, to the marked torque.
remedy-F24 = Cut the wire back to bright copper, make the joint again, torque it.
remedy-F25 = Fit connectors rated for aluminium and copper, torqued. Many places reserve aluminium for an electrician.
remedy-F26 = Set the clock right; if its contacts do not make, change the timer.
remedy-F27 = Nothing is broken. Explain the three quarters of power, or fit elements rated for 208 V.
remedy-F28 = Move the breaker to a space where its poles sit on both legs.
remedy-F29 = Change the element for one that matches the plate, with a new gasket.
remedy-F30 = Land the wire of D1 on U4, as the diagram has it, and prove both cut-outs.
remedy-F31 = Lock off, make the equipment ground whole, change the leaking element, prove the shell at 0 V. Work for an electrician.
remedy-F33 = Press it flat under its clip, insulation and cover back on, and prove its cut-out.
remedy-F34 = Set both dials to 120 °F.
remedy-F35 = Set both dials to 120 °F, and advise a mixing valve for anything hotter.
remedy-F36 = Set both dials to 120 °F.
remedy-F37 = Change the dip tube and flush the strainers.
remedy-F38 = Find the fixture by shutting the stops one by one, and change its cartridge.
remedy-F39 = Change the mixing valve and set it to 120 °F.
remedy-F40 = Put each connection on its own nipple.
remedy-F41 = Flush the tank under pressure until the drain runs clear, and change the crusted lower element with its gasket.
remedy-F42 = Nothing to change. Explain what colder water asks of a heater, and advise a mixing valve or less flow.
remedy-F43 = Find the leak and mend the hot line.
remedy-F44 = Change the pump’s timer or the check valve, whichever lets the loop run.
remedy-F45 = Fit an expansion tank charged to the static pressure. The relief valve did its work.
remedy-F46 = Change the regulator and set it below 80 psi.
remedy-F47 = Flush it twice; if it still weeps change it for one set no higher than the tank’s working pressure.
remedy-F48 = Power off at once. Change upper thermostat and limit, then prove the cut-out.
remedy-F49 = Change the expansion tank, charged to the house’s pressure.
remedy-F50 = Change the gasket on a cleaned seat.
remedy-F51 = Change the drain valve.
remedy-F52 = Change the nipples and unions.
remedy-F53 = Nothing to change. Wipe it dry, see it stay dry once the tank is hot, and advise air.
remedy-F54 = Change the anode rod for one of aluminium with zinc, and flush.
remedy-F55 = Change the anode rod; tell the customer what a rusting shell may come to.
remedy-F56 = Change the anode rod.
remedy-F57 = Take the pipe out of its straps and hang it in padded clips.
remedy-F58 = Change the nipples.
remedy-F60 = Change the sensor.
remedy-F61 = Change the board, then prove that it opens.
remedy-F62 = See that the tank is full at every tap, then take the board’s supply away and give it back.
remedy-F64 = Nothing to change. Measure again at low impedance, and say what was measured.
remedy-F65 = Cut the neutral’s splice back and make it again, to the marked torque.
remedy-F66 = Land the white wire on the second pole, re-identified as hot.
remedy-F67 = Change both elements for ones that match the plate, and find what killed them.
remedy-F68 = Land each on its own screw, as the diagram has it, and prove the cut-out.
remedy-F69 = Close the heater’s breaker and write the truth into the directory.
remedy-F70 = Change upper thermostat and limit, both flat on the shell; then prove the cut-out.
remedy-F71 = Cut the wire back to bright copper, make the joint again, torque it, then watch a cycle.
remedy-F72 = Change the thermostat, then prove its cut-out and its cut-in.
remedy-F73 = Nothing to change here. Call the utility or an electrician at once: voltages on both sides shift.
remedy-F74 = Reset or change the cartridge of that fixture.
remedy-F75 = Heat and dry it and test again; still below 1 MΩ, change the element.

advice-demand-exceeds-capacity = The house asks for more hot water than this heater can make; a larger one, a second one or less flow would help.
advice-low-supply-voltage = The building has 208 V; a heater rated 240 V makes three quarters of its power on it. Accept it, or fit elements rated 208 V.
advice-safe-temperature = Keep both dials at 120 °F; hotter water burns, and anything hotter needs a mixing valve at the tap.
advice-cold-main = Colder water comes in than usual, so each gallon takes longer to heat and goes less far; nothing in the heater is wrong.
advice-damp-air = Damp air settles on cold metal while cold water comes in; let air to it. Nothing leaks.
advice-nothing-wrong = The heater is sound; this is what was measured.

observation-mislabelled-breaker = a breaker feeds something other than its label says
observation-second-source = a second source feeds the heater
observation-broken-lead = a meter lead was broken
observation-no-expansion-control = a closed system without expansion control
observation-oversized-breaker = a breaker larger than its wire allows
observation-scalding-water = water hotter than 120 °F at the tap

helper-electrician = a licensed electrician
helper-plumber = a licensed plumber
helper-utility = the utility
helper-ambulance = an ambulance

licence-plumber = Plumber
licence-electrician = Electrician
licence-maintenance = Maintenance
licence-supervised-learner = Learner under supervision

mode-coached = Coached drill
mode-solo = Solo drill
mode-exam = Exam

trap-broken-lead = A broken meter lead
trap-mislabelled-breaker = A mislabelled breaker
trap-second-source = A second source
trap-ghost-volts = Ghost volts
trap-somebody-resets = Somebody switches an unlocked breaker on
trap-worn-lead = A meter lead that makes contact only now and then
trap-wrong-jack = A meter lead left in the amperes jack
trap-weak-battery = A meter battery that is nearly flat

symptom-no-hot = No hot water
symptom-runs-out = Runs out
symptom-lukewarm = Lukewarm
symptom-too-hot = Too hot
symptom-trips = Trips the breaker
symptom-wet = Water on the floor
symptom-relief-drips = Relief pipe drips
symptom-lights = Lights too bright or dim
symptom-tingle = A tingle at the taps
symptom-rusty = Brown hot water
symptom-eggs = Smells of rotten eggs
symptom-slow = Slow to recover
symptom-noise = Noise
symptom-smell = Smell
symptom-bill = Bill
symptom-nothing = No complaint

## Questions

question-last-good = When was the water last as it should be?
question-how-much = Does it start hot and run out, or never get hot?
question-too-hot = Is it ever too hot?
question-tripped = Has a breaker tripped, has anybody reset anything?
question-who-touched = Has anybody worked on it or changed a setting?
question-water = Any water on the floor, any drip?
question-noise-smell = Any smell, any colour in the water?
question-people = How many of you are there, and who uses most?
question-every-tap = Is it the same at every tap?
question-bill = How is the electricity bill?
question-age = How old is the heater?
question-house = Is anything else wrong in the house: the lights, a tingle anywhere?
question-other-supply = Is there any other supply to it: a timer, an off-peak meter, solar panels?

question-which-tap = At which tap did you notice first?
question-time-of-day = At what time of the day is it worst?
question-how-often = Every time, or now and then?
question-sudden = Did it come all at once, or bit by bit?
question-back-again = Once it has failed, how long until there is hot water again?
question-water-bill = How is the water bill?
question-noise = Any noise: rumbling, hissing, taps that spit?
question-parts = Has any part of it been changed?
question-cost = Is there a sum beyond which I should ask first?
question-stands = Where does the heater stand?
question-strong = Is the flow as strong as ever?
question-clear = Is the water clear?

## What the people say

complaint-no-hot = We have no hot water to speak of.
complaint-runs-out = The hot water runs out on us.
complaint-lukewarm = It never gets properly hot any more.
complaint-too-hot = The water comes out far too hot. Somebody will get burnt.
complaint-trips = The breaker for the heater keeps tripping.
complaint-wet = There is water where there should be none, around the heater.
complaint-relief-drips = That pipe on the side of the heater drips.
complaint-lights = Something is wrong with the power in the house, and the heater is on it too.
complaint-tingle = We get a tingle off the taps.
complaint-rusty = The hot water comes out brown. The cold is fine.
complaint-eggs = The hot water stinks of rotten eggs. The cold is fine.
complaint-slow = There is hot water, but it takes for ever to come back.

complaint-noise = The heater makes noises it did not make before.
complaint-smell = There is a smell, and it comes from the heater.
complaint-bill = Our bill is far too high.
complaint-nothing = We would like somebody to look at the heater. Nothing we could put a finger on.
complaint-no-hot-1 = There is no hot water.
complaint-no-hot-2 = Everything out of the hot tap is cold.
complaint-runs-out-1 = We do not have enough hot water any more.
complaint-runs-out-2 = Somebody always ends up in cold water.
complaint-lukewarm-1 = The hot water is not hot.
complaint-lukewarm-2 = All we get is warm water.
complaint-too-hot-1 = You cannot hold your hand under it, it is that hot.
complaint-too-hot-2 = The hot water is dangerous, it is so hot.
complaint-trips-1 = We keep finding the heater’s breaker off.
complaint-trips-2 = Something trips the breaker of the heater.
complaint-wet-1 = It is wet around the heater.
complaint-wet-2 = Something leaks where the heater stands.
complaint-relief-drips-1 = Water comes out of the pipe at the side.
complaint-relief-drips-2 = The relief pipe is wet, and there is a mark under it.
complaint-lights-1 = The power is odd in the whole house.
complaint-lights-2 = The lights act up, and we worry about the heater.
complaint-tingle-1 = The tap bites.
complaint-tingle-2 = We feel a prickle when we touch the tap.
complaint-slow-1 = It gets hot, but it needs half a day.
complaint-slow-2 = The heater has become slow.
complaint-rusty-1 = Our hot water looks like tea.
complaint-rusty-2 = The bath fills brown.
complaint-eggs-1 = The shower smells of bad eggs.
complaint-eggs-2 = There is a stink in the hot water, like something rotten.
complaint-noise-1 = Something in the tank is loud.
complaint-noise-2 = We hear the heater through the wall.
complaint-smell-1 = Something smells near the heater.
complaint-smell-2 = It smells, and we do not like it.
complaint-bill-1 = The bill frightened us.
complaint-bill-2 = We pay far more than before.
complaint-nothing-1 = It works, I believe. Please have a look at it.
complaint-nothing-2 = We just want it checked.

says-last-good-unknown = I could not say when it was last right.
says-last-good = { $days ->
    [0] It was still right this morning, I think.
    [one] It was all right until yesterday.
   *[other] It was all right until about { $days } days ago.
}
says-never = It never gets hot at all.
says-runs-out = It starts hot, and after about { $after } of a shower it is gone.
says-lukewarm = Lukewarm is the best it does.
says-enough = There is as much as there ever was.
says-not-too-hot = No, too hot it is not.
says-too-hot = It is so hot you pull your hand away.
says-not-tripped = Nothing tripped that I know of, and nobody reset anything.
says-breaker-tripped = { $times ->
    [one] The breaker was off once; it was switched on again.
   *[other] The breaker was off { $times } times; it was switched on again each time.
}
says-button-pushed = { $times ->
    [one] { $who } pushed the red button once.
   *[other] { $who } pushed the red button { $times } times.
}
says-nobody = Nobody touched it that I know of.
says-touched = { $who } had a look at it.
says-touched-dial = { $who } had a look at it, and turned the dials, I believe.
meddler-nobody = Nobody
meddler-household = One of us
meddler-neighbour = A neighbour
meddler-tradesperson = Somebody from the trade, some time ago,
says-dry = No, it is dry.
says-wet-relief = The pipe from that valve drips: about { $a-day } in a day.
says-wet-floor = There is water on the floor: about { $a-day } in a day.
says-burnt = There is a smell now and then, like something scorched.
says-eggs = The hot water smells of rotten eggs.
says-rusty = The hot water is brown, worst in the morning.
says-no-smell = No smell.
says-people = { $adults ->
    [one] One grown-up
   *[other] { $adults } grown-ups
}{ $children ->
    [0] {" "}live here.
    [one] {" "}and one child live here.
   *[other] {" "}and { $children } children live here.
}
says-demand = We have more people staying than usual.
says-not-every-tap = No, not at every tap.
says-which-tap-unknown = I could not say where first.
says-which-tap = It was first at this tap: { $tap }.
says-all-day = It makes no difference what time it is.
says-worst-morning = In the morning, mostly.
says-worst-midday = In the middle of the day, mostly.
says-worst-evening = In the evening, mostly.
says-worst-night = At night, mostly.
says-how-often = { $times ->
    [0] I have not seen it happen.
    [10] Every time.
   *[other] About { $times } times out of ten.
}
says-sudden = All at once.
says-creeping = Not all at once. Now it does, now it does not.
says-not-back = It has not come back since.
says-back-again = About { $after }, then it is hot again.
says-water-bill-up = The water bill is up as well.
says-rumbles = It rumbles and pops while it heats.
says-hisses = There is a hiss from the pipe at the side now and then.
says-spits = The taps spit.
says-ticks = A pipe ticks when the hot water runs, and after.
says-no-noise = No noise that I would have noticed.
says-no-parts = No part was changed that I know of.
says-parts = { $who } put a part in, not long ago.
says-cost-open = Do what has to be done.
says-cost = Please ask me before it goes over { $dollars } dollars.
says-stands = It stands { $place }.
says-weak-flow = The hot side runs weaker than it used to.
says-strong-flow = It runs as strong as ever.
says-grit = There is grit in it, and flakes sometimes.
says-clear = Clear, yes.
says-every-tap = Yes, every tap is the same.
says-bill-up = The bill is up, now that you say it.
says-bill-down = Lower than usual, if anything.
says-bill-same = About as always.
says-age = { $years ->
    [one] About a year.
   *[other] About { $years } years.
}
says-house-fine = No, everything else works.
says-house-lights = Some lights are dim and some glare, and it changes with what is on.
says-house-half = Half the lights are dim or out.
says-house-bright = Some lights glare.
says-house-tingle = When I hold the tap my fingers tingle.
says-other-supply = There is some box from the power company on it, for cheap hours.
says-no-other-supply = Not that I know of.

## Acts

act-tell-household = Told the household: power and hot water off, touch nothing
act-read = Read { $what }
act-look = Looked at { $at }
act-listen = Listened at { $at }
act-smell = Smelled at { $at }
act-touch = Touched { $at }
touch-water = water at the { $tap }
act-wipe = Wiped dry: { $fitting }
act-gloves-on = Gloves on
act-gloves-off = Gloves off
act-eyes-on = Eye protection on
act-eyes-off = Eye protection off
act-breaker-on = Breaker { $slot } on
act-breaker-off = Breaker { $slot } off
act-try-start = Tried the start: dial up, listened
act-lock-on = Own lock and tag on breaker { $slot }
act-lock-off = Lock and tag off breaker { $slot }
act-move-breaker = Moved breaker { $slot } to a space on both legs
act-box-handle-on = Box in the line closed
act-box-handle-off = Box in the line opened
act-box-lock-on = Own lock and tag on the switch in the line
act-box-lock-off = Lock and tag off the switch in the line
act-pull-fuse = Pulled the fuse of { $leg }
act-put-fuse = Put the fuse of { $leg } back
act-test-fuse = Ohms through the fuse of { $leg }, out of its clips
act-set-clock = Set the timer’s clock to the time of day
act-relabel = Corrected the directory: breaker { $slot } feeds { $feeds }
act-cover-off = Off: { $cover }
act-cover-on = On: { $cover }
act-meter = { $function }: red { $red }, black { $black }
act-return-shut = Valve of the loop shut
act-return-part = Valve of the loop { $percent } % open
act-return-open = Valve of the loop open
act-zero-leads = Leads held together, ohms zeroed
act-prove-meter = Proving the meter on { $on }
act-spare-leads = Spare leads and a fresh fuse in the meter
act-jack-volts = Red lead into the volts jack
act-jack-amps = Red lead into the amperes jack
act-change-battery = Fresh battery in the meter
act-non-contact = Non-contact tester at { $at }
act-clamp-pair = Clamp around { $first } and { $second } together
act-clamp = Clamp around { $wire }
act-clamp-both = Clamp around both legs together
act-press-reset = Pressed the limit’s button
act-lift = Lifted { $end }
act-label = Labelled { $end }
act-land = Landed { $end } on { $screw }, hand tight
act-land-torqued = Landed { $end } on { $screw }, torqued
act-remake = Made again: { $end }, hand tight
act-remake-torqued = Cut back and made again, torqued: { $end }
act-dial = Turned the { $level } dial to { $to }
act-seat = Pressed the { $level } thermostat flat against the shell
act-cold-shut = Cold valve shut
act-cold-part = Cold valve { $percent } % open
act-cold-open = Cold valve open
act-tap-shut = Shut the { $tap }
act-tap-part = Opened the { $tap } { $percent } %
act-tap-open = Opened the { $tap } full
act-bucket = { $volume } from the { $tap } into a bucket, timed
act-hose-on = Hose on the drain
act-hose-off = Hose off the drain
act-drain-shut = Drain shut
act-drain-part = Drain { $percent } % open
act-drain-open = Drain open
act-lever-on = Relief valve’s lever up
act-lever-off = Relief valve’s lever down
act-wait = Waited { $time }
act-wait-for-cut-out = Waited for the cut-out
act-thermometer = Thermometer: { $at }
act-gauge-on = Lazy-hand gauge on, hand set down
act-gauge-off = Gauge off
act-read-gauge = Read the gauge
act-stops-shut = Shut the stops under the { $tap }
act-stops-open = Opened the stops under the { $tap }
act-sample-hot = Catch a glass of the { $tap }’s hot water, look and smell
act-sample-cold = Catch a glass of the { $tap }’s cold water, look and smell
act-look-at-anode = Unscrew the anode rod and look at it
act-read-water-meter = Read the water meter
act-unplug = Pulled the plug of the { $level } sensor
act-plug = Plugged the { $level } sensor in
act-tank-charge = Expansion tank’s charge at its air valve
act-replace = Changed: { $part }
act-finding = Finding written: { $fault }
act-advise = Told the customer: { $advice }
act-report = Reported: { $what }
act-stop-and-call = Stopped, and called { $whom }
act-tell-result = Told the customer what was found and done, and that the water will be hot
act-hand-over = Handed over the job
act-time-up = The page’s clock ran out ({ $minutes } minutes, unproven)

probe-shell = shell beside the { $level } control
probe-cold-pipe = pipe at the nipple marked cold
probe-return-pipe = return of the recirculation loop
probe-hot-pipe = pipe at the nipple marked hot
probe-relief-pipe = relief valve’s pipe
probe-drain = water from the drain

## What was shown

shown-pressure = { $now } now, { $highest } the highest since the hand was set
shown-charge = { $air } of air
shown-charge-water = Water comes out of the air valve.
shown-plate = { $nominal }, both elements { $rating }, not both at once, working pressure { $working }
shown-diagram = The diagram shows where each wire belongs.
shown-stamp = Stamp on the { $level } element: { $rating }
shown-dial = Dial { $dial }
shown-dials = Upper dial { $upper }, lower dial { $lower }
shown-non-contact-sounds = The non-contact tester sounds.
shown-non-contact-silent = The non-contact tester is silent. That does not show it is dead.
shown-stopped = The coach stopped this before it hurt. { $harm }
shown-bucket = { $volume } at { $flow }; { $first } at first, { $last } at the end.
shown-bucket-fell = { $volume } at { $flow }; { $first } at first, { $last } at the end; 15 °F lower after { $after }.
shown-bucket-spat = It spat air.
display-over = OL
display-blank = The display stays dark
display-tone = Tone
display-silent = No tone
display-live = Circuit live ({ $volts }): no reading to believe

refused-cover-on = The { $cover } is still on.
refused-order-of-covers = The { $cover } is in the way.
refused-already-so = It is so already.
refused-not-here = There is no such thing here.
refused-wire-landed = { $end } is on its screw. Lift it first.
refused-wire-lifted = { $end } is off its screw.
refused-out-of-reach = That wire does not reach { $screw }.
refused-locked = A lock holds it off.
refused-sealed = The utility has sealed it. It is theirs to open.
refused-no-hasp = Nothing on it takes a lock: a control is no isolation.
refused-fuse-in = The fuse is in its clips. Pull it first, or read across the switch.
refused-not-off = It has to be off before a lock goes on.
refused-tank-not-drained = Water stands above the opening. It has to fall below { $percent } % first.
refused-under-pressure = The tank is still under pressure.
refused-no-gauge = The gauge is not on.
refused-no-flow = Nothing comes from that tap.
refused-nothing-to-reach = There is nothing to reach from here.
refused-out-of-range = That number makes no sense here.
refused-no-such-step = There is no step { $step } in the log yet.
refused-over = The job is over.
refused-same-point = Both leads are on one point.

noticed-breaker-tripped = Breaker { $slot } trips with a clack.
noticed-somebody-reset = Somebody of the house switched breaker { $slot } on. Nothing held it off.
noticed-box-closes = A clack from the box in the line: its contacts close.
noticed-box-opens = A clack from the box in the line: its contacts open.
noticed-click = A click from the { $level } control.
noticed-relief-runs = The relief valve runs.
noticed-flooding = Water spreads on the floor: about { $volume } so far.
noticed-bang = A bang from inside the tank, and a burnt smell.
noticed-drain-stopped = The drain stands still though water is left: no air gets in.
noticed-tank-empty = The drain has run out.
noticed-runs-solid = The { $tap } runs full and steady, no more air.
noticed-low-battery = The meter shows its low-battery sign: its readings may be false.
noticed-flash = A flash and a bang at { $at }.

sight-ordinary = Nothing out of the ordinary.
sight-breaker = Breaker { $slot } is { $handle }.
sight-breaker-locked = Breaker { $slot } is { $handle }, a lock on it.
sight-box-shut = { $kind } stands in the line, its door shut.
sight-box-on = { $kind } stands in the line, closed.
sight-box-off = { $kind } stands in the line, open.
sight-box-locked = { $kind } stands in the line, open, a lock on it.
sight-box-hours = Its clock shows { $shows }. It is off from { $from } until { $until }.
sight-fuse-out = The fuse of { $leg } is out of its clips.
sight-one-leg = Both poles of breaker { $slot } sit on spaces of one leg.
sight-cable = The cable is { $awg } AWG { $metal }.
sight-cable-unrated = The cable is { $awg } AWG { $metal }, in connectors marked for copper only.
sight-charred = Charred: { $end }.
sight-browned = Browned by heat over its contact { $contact }.
sight-lifted = Off its screw: { $end }.
sight-crossed = On { $on } instead of its own screw: { $end }.
sight-button-proud = The limit’s button stands proud.
sight-button-in = The limit’s button is in.
sight-wet = Wet: { $fitting }.
sight-dripping = Drops form: { $fitting }.
sight-dry = Dry: { $fitting }.
sight-floor = Water on the floor, about { $volume }.
sight-relief-running = Water comes from the relief valve’s pipe.
sight-expansion-tank = An expansion tank hangs on the cold pipe.
sight-no-expansion-tank = No expansion tank on the cold pipe.
sight-check-valve = A check valve sits in the cold line at the meter.
sight-no-check-valve = No check valve or regulator in the cold line.
sight-loop-runs = A recirculation pump stands at the return and hums.
sight-loop-rests = A recirculation pump stands at the return, and rests.
sight-grit = Grit and scale come with the water from the drain.
sight-popping = It pops and crackles low in the tank.
sight-ticking = The hot pipe ticks.
sight-flakes = White flakes in the strainer.
sight-tap-dry = Nothing comes from the { $tap }.
sight-tap-runs = The { $tap } runs at { $flow }.
sight-tap-spits = The { $tap } spits air and water.
sight-drain-runs = The drain runs at { $flow }.
sight-drain-stands = Nothing comes from the drain.
sight-lever-solid = Solid water from the relief valve.
sight-lever-airy = Air, then spitting, from the relief valve.
sight-starts = Something starts: a click and a hum.
sight-starts-not = Nothing starts.
sight-clicked = The button clicks in.
sight-no-click = The button does not click.
sight-burnt-smell = A smell of burnt insulation.
sight-simmering = An element simmers.
sight-warmth = About { $about } to the hand.
sight-board-heats = The board says: no fault.
sight-board-dark = The board is dark.
sight-board-says = The board says: { $lockout }.
lockout-upper-open = upper sensor open
lockout-lower-open = lower sensor open
lockout-upper-shorted = upper sensor shorted
lockout-lower-shorted = lower sensor shorted
lockout-too-hot = water too hot
lockout-no-water = no water over the element
lockout-leak = water in the tray
sight-sample-clear = The { $side } water is clear and smells of nothing.
sight-sample-rusty = The { $side } water is brown; it smells of nothing.
sight-sample-eggs = The { $side } water is clear and smells of rotten eggs.
sight-sample-both = The { $side } water is brown and smells of rotten eggs.
sight-rod-whole = The anode rod, { $metal }, is pitted but thick all along.
sight-rod-worn = The anode rod, { $metal }, is worn: its core shows.
sight-meter-turns = The water meter’s small dial turns; it reads { $reading }.
sight-meter-stands = The water meter stands still; it reads { $reading }.
sight-off-the-shell = The { $level } thermostat stands off the shell.
sight-limit-off-the-shell = The { $level } limit stands off the shell.
sight-scorched = The { $level } element is scorched, its plating gone.
sight-water = Water at about { $temperature }.

## Doors

page-doors-title = A service call, worked on a heater that is computed
page-doors-lead = Make it dead and prove it, find the one thing wrong from readings, change that part and no other, refill before power, prove the repair.
page-door-practise = Practise alone
page-door-practise-about = One call after the other, each drawn anew. Every reading is computed from the fault that is there.
page-door-code = I have a code or a file
page-door-code-about = From your instructor, or from somebody who wants you to work the same call.
page-door-exam = Exam
page-door-exam-about = One call without hints. Your instructor opens the debrief afterwards.
page-door-exam-open = To the exam
page-door-instructor = Instructor
page-door-instructor-about = Hand drills out as a code, a link or a sheet; read attempts in, replayed and verified.
page-door-instructor-open = To the instructor’s desk
page-choose = Choose the heater, the household, the fault
page-choose-mode = How
page-choose-heater = Heater
page-choose-household = Household
page-choose-climate = Town
page-choose-location = Where it stands
page-choose-licence = Licence of the learner
page-choose-fault = Fault
page-choose-traps = Traps
page-choose-limit = Limit in simulated minutes
page-choose-limit-note = Empty for none; 5 to 1023. Time inside the simulation: it passes with each act, and stands still while the learner thinks.
page-choose-clock = Limit by the wall clock, in minutes
page-choose-clock-note = Empty for none; 1 to 1023. The learner’s own device keeps it; a file cannot prove it.
page-chance = Left to chance
page-fault-chance = Left to chance
page-fault-chance-note = Any that can be in this house, as often as the trade meets it.
page-fault-named = One of these
page-fault-named-note = Each as likely as the others.
page-faults-named = Faults it may be
page-mode-coached = Coached
page-mode-coached-note = Hints when asked. An act that would hurt is stopped, explained and counted.
page-mode-solo = Solo
page-mode-solo-note = No hints. The world answers as it would. Debrief at the end.
page-mode-exam = Exam
page-mode-exam-note = No hints, and no debrief until your opening file is loaded.
page-practise = Go on to the call
page-code = Drill code
page-code-open = Open it
page-file-open = Open a drill file
page-file-unreadable = not readable as text, or far too large
page-learner = Your name or number
page-learner-note = It travels in your attempt and stays on this device until you clear it.
page-term-limit = Time on the job
page-term-clock = Time on the clock
page-minutes = { $minutes ->
    [one] 1 min
   *[other] { $minutes } min
}
page-start = Start
page-start-anyway = Give it up and start this one
page-gives-up = Another drill is under way on this device. Starting this one gives it up for good.
page-back = Back
page-to-doors = To the first page
page-link-wrong = This link does not work
page-resume = Go on with it
page-resume-debrief = To its debrief
page-resume-under-way = { $mode } under way: it is { $clock } on the job, { $steps ->
    [0] nothing done yet
    [one] one act done
   *[other] { $steps } acts done
}.
page-resume-ended = { $mode }, ended at { $clock } after { $steps ->
    [one] one act
   *[other] { $steps } acts
}.
page-copy = Copy
page-copied = Copied.
page-selected = Selected: copy it with your keyboard or by a long press.

## Exam

page-exam-lead = Enter the code you were given, or open the drill file.
page-exam-not = That drill is not an exam. Open it from the first page.
page-expect-one-call = One service call, from the doorbell to handing over. Nothing dangerous is hidden from you: the world answers as it would.
page-expect-licence = You work as: { $licence }. The right remedy, and where to stop and call, follow from it.
page-expect-no-hints = No hints and no coach.
page-expect-limit = You have { $minutes } simulated minutes. They pass with each act, not while you think.
page-expect-clock = You have { $minutes } minutes on the clock of this device, from the moment you start. Reloading the page does not stop it.
page-expect-reload = Every act is kept on this device. If the page closes, open it again and go on.
page-expect-hand-in = At the end you save your attempt and hand it in.
page-expect-no-debrief = No score and no debrief until your instructor opens it.
page-clock-left = { $minutes ->
    [one] 1 min left on the clock
   *[other] { $minutes } min left on the clock
}
page-exam-over = The exam is over
page-exam-over-lead = Hand in your attempt now. The debrief stays shut until your instructor gives you the opening file.
page-opening = Open the debrief
page-opening-about = With the opening file from your instructor.
page-opening-load = Load the opening file
page-opening-other = This file opens another exam.
page-hand-in = Your attempt
page-hand-in-about = { $learner }, { $acts ->
    [one] one act
   *[other] { $acts } acts
}. The file holds your name, the drill and what you did; everything else is computed from it again.
page-no-name = No name
page-save-attempt = Save the attempt as a file
page-save-failed = The browser would not save a file. Copy the text instead.
page-as-text = Or copy it as text
page-attempt-text = Attempt as text

## Debrief

debrief-title = Debrief
debrief-folding = Working your acts through again …
debrief-folding-would = Working it through with each other fault …
debrief-not-ended = The job has not ended yet. Hand it over, or stop and call, to read the debrief.
debrief-nothing = There is no finished drill on this device.
debrief-no-acts = Nothing was done.
debrief-again = Work it again
debrief-print = Print the service report
debrief-next = Next drill
debrief-accounts = Four accounts
debrief-clean-safety = Nobody was hurt or put at risk.
debrief-clean-finding = Right finding, on evidence that tells it from the others.
debrief-clean-repair = The right remedy, and nothing changed in vain.
debrief-clean-finish = Everything was left as it should be.
debrief-of = of { $of }
debrief-kept = { $count ->
    [one] One remark that cost nothing
   *[other] { $count } remarks that cost nothing
}
debrief-why = Why it matters.
debrief-right = What would have been right.
debrief-go-to = { $clock } · { $act }
debrief-verdict = Verdict
debrief-fault = What was wrong
debrief-remedy = What puts it right
debrief-finding = What you wrote
debrief-no-finding = No finding was written.
debrief-ending = How it ended
debrief-customer = What the customer gets
debrief-learner = Learner
debrief-code = Drill
debrief-report = Service report
debrief-headline = Service call { $call } · { $street } · { $fault } · { $ending }
debrief-right-call = Make it safe, stop, and call { $whom }: the rest is beyond this licence. { $remedy }
debrief-afterwards = Days later they call again: { $symptom }.
debrief-handed-on = Handed on to { $whom }, whose work it is.
debrief-nothing-new = It told nothing new: each suspect still open would have shown the same. That is never charged.
debrief-ruled-out-many = It ruled out { $count } suspects.
debrief-ruled-out = It ruled out: { $faults }.
debrief-end-handed-over = Handed over
debrief-end-called = Stopped, and called { $whom }
debrief-end-injured = An injury ended it
debrief-end-time-out = The simulated time ran out
debrief-end-clock-out = The page’s clock ran out (unproven)
debrief-end-none = Not ended
debrief-cured = Repaired: what was wrong is put right.
debrief-not-cured = Not repaired: what was wrong is still there.
debrief-tank = { $temperature } at the top of the tank when you left.
debrief-time = { $time } on the job.
debrief-bill = Parts for ${ $cost }.
debrief-no-bill = No parts to pay for.
debrief-drawing = Water in the tank, current and time over { $steps } acts. The list of acts says the same in words.
debrief-top = top
debrief-water = water in the tank, top to bottom
debrief-current = current: leg 1 dashed, leg 2
debrief-your-way = Your way
debrief-phase-people = people
debrief-phase-look = look
debrief-phase-safe = make safe
debrief-phase-measure = measure
debrief-phase-repair = repair
debrief-phase-water = water
debrief-phase-wait = wait
debrief-moments = Moments that the accounts speak of
debrief-inspector = One act
debrief-before = The act before
debrief-after = The act after
debrief-step-of = act { $step } of { $last }
debrief-not-charged = Nothing charged for this act.
debrief-had-it-been = Had it been …
debrief-more = and { $count ->
    [one] one more
   *[other] { $count } more
}
debrief-alike = the same
debrief-steps = Every act
debrief-sections = Sections
debrief-tab-account = Account
debrief-tab-inside = Inside
debrief-tab-steps = Acts
debrief-tab-report = Report

## Instructor

instructor-halves = Hand out or read in
instructor-hand-out = Hand out a drill
instructor-collect = Read attempts
instructor-longer = For a learner who is given more time on the clock, raise that limit and hand out the code that appears. It is the same call.
instructor-another = Draw another call
instructor-seed = Call { $seed }
instructor-sheet = To hand out
instructor-link = Link
instructor-square = The link as a square code for a camera
instructor-print = Print the sheet
instructor-save-drill = Save the drill as a file
instructor-save-opening = Save the opening file
instructor-opening-note = Keep the opening file until everybody has handed in. A learner with more time on the clock needs no other one.
instructor-paper-title = Service call on an electric water heater
instructor-paper-open = Open the link, or the page you were shown, and enter the code.
instructor-paper-name = Type your name or number.
instructor-paper-work = Work the call: make it dead and prove it, find what is wrong, put it right, prove the repair.
instructor-paper-hand-in = At the end save your attempt as a file and hand it in.
instructor-collect-about = Files or texts that learners handed in. Each is worked through again on this device; nothing is sent anywhere.
instructor-pick = Choose attempt files
instructor-paste = Or paste one as text
instructor-paste-add = Add it
instructor-pasted = pasted text
instructor-judging = { $judged } of { $total } worked through …
instructor-judged = { $total ->
    [one] One attempt worked through.
   *[other] { $total } attempts worked through.
}
instructor-bad = { $count ->
    [one] One file could not be used
   *[other] { $count } files could not be used
}
instructor-csv = Save the table (CSV)
instructor-clear = Empty the table
instructor-none = No attempts yet.
instructor-col-learner = Learner
instructor-col-drill = Fault
instructor-col-mode = Mode
instructor-col-seal = File
instructor-col-ending = Ended
instructor-col-total = Total
instructor-col-minutes = Minutes
instructor-col-acts = Acts
instructor-sealed = sealed
instructor-unsealed = unsealed
instructor-unproven-clock = ended by the clock, unproven
instructor-open = Step through
instructor-back = Back to the table
instructor-review = Attempt of { $learner }
instructor-no-name = (no name)
instructor-unsafe = Commonest in the account of safety, and what would have been right
instructor-of-all = { $count } of { $total }
instructor-table = Attempts with their accounts

## Sources

sources-link = Sources
sources-tag = Sources
sources-back = The job under way
sources-title = Where does this come from?
sources-lead = { $count } numbers make the heater, the house and its people. Each says where it comes from, and how far to trust it.
sources-caution = Figures of this simulation, not advice for a job. On a real heater its plate, its maker’s papers and local code come first.
sources-search = Search names, values and documents
sources-search-example = relief, 150 psi, IEC 60479
sources-kind = Kind of source
sources-kind-all = All
sources-kind-all-about = Every number.
sources-kind-published = Published
sources-kind-published-about = Seen in the document that is named.
sources-kind-computed = Computed
sources-kind-computed-about = Worked out from the inputs that are named.
sources-kind-common-practice = Common practice
sources-kind-common-practice-about = Usual in the trade; no document says so.
sources-kind-memory = From memory
sources-kind-memory-about = Still to be looked up in the document that is named.
sources-kind-model = Model choice
sources-kind-model-about = Chosen for this simulation, for the reason given.
sources-kind-invented = Invented
sources-kind-invented-about = Made up for practice: people, places, equipment.
sources-found =
    { $count ->
        [one] { $count } number
       *[other] { $count } numbers
    }
sources-none = Nothing fits. Take a word out of the search, or choose All.
sources-plate = Where do these figures come from?
sources-score = Where do the numbers of this fault come from?
sources-group-bench-person = The body: current, heat, time
sources-group-bench-instrument = Instruments: ranges and accuracy
sources-group-bench-minutes = How long each act takes
sources-group-solver-skin = Skin and the burn it takes
sources-group-solver-water = Water itself
sources-group-plant-branch = Branch circuits: breakers and conductors
sources-group-plant-conductor = Conductors: gauge, metal, warmth
sources-group-plant-in_line = Boxes in the line: switches, timers, relays
sources-group-plant-location = Where heaters stand
sources-group-plant-layout = Ways a heater is wired
sources-group-plant-wire = Cables and joints
sources-group-plant-build = A sound house
sources-group-plant-climate = Places and their water mains
sources-group-plant-controls = Thermostats, limit, breakers, elements, joints
sources-group-plant-electrical = Wiring and its resistances
sources-group-plant-fault = Faults: how often, how bad
sources-group-plant-heater = Heaters and their plates
sources-group-plant-household = People: habits, patience, memory
sources-group-plant-named = Names in files
sources-group-plant-parts = Parts as fitted
sources-group-plant-points = Cables and places to touch
sources-group-plant-supply = Services and load centers
sources-group-plant-thermal = Heat and water in the tank
sources-group-plant-waterworks = Pipes, valves, taps

## Harm

harm-shock = Shock: { $volts } { $path } drive { $current } through { $impedance } for { $time }: { $zone }.
harm-shock-time = Past { $time } the heart is in danger.
harm-shock-gfci = A ground-fault interrupter, where one guards the circuit, opens after { $time }.
path-hand-hand = from hand to hand
path-left-hand-feet = from the left hand to the feet
path-right-hand-feet = from the right hand to the feet
path-hands-feet = from both hands to the feet
path-left-hand-trunk = from the left hand to the trunk
path-right-hand-trunk = from the right hand to the trunk
path-foot-foot = from foot to foot
curve-c1 = Up to about one heart in twenty fibrillates at this current and time.
curve-c2 = Up to about half of all hearts fibrillate at this current and time.
curve-c3 = More than half of all hearts fibrillate at this current and time.
zone-imperceptible = too little to feel
zone-perceptible = felt as a tingle
zone-let-go-at-risk = some people can no longer let go
zone-beyond-let-go = most people can no longer let go
zone-fibrillation = the heart may fibrillate
harm-burn = { $source } at { $temperature } on the skin for { $time }: { $degree } ({ $who }).
burn-source-water = Water
burn-source-splash = A splash
burn-source-steam = Steam
burn-source-metal = Metal
degree-none = no burn
degree-first = red and sore
degree-second = a burn with blisters
degree-third = a burn through the skin
who-technician = you
who-adult = a grown-up of the house
who-child = a child of the house
harm-flood = { $volume } of water on the floor.
harm-element = The { $level } element burnt out: { $power } in air, gone after { $time }.
harm-arc = An arc: { $volts } drove { $current } through a short.
harm-meter = The meter met { $volts } in a range that cannot stand it. Its fuse is blown.
harm-board = The insulation tester put { $volts } on the control board. Its relays no longer close.
harm-gas = { $volume } of gas came out of the tap before the water. After a long rest it is hydrogen, and it burns.
harm-steam = Water at { $water } under { $pressure } flashed to steam.
harm-overpressure = The tank was pushed to { $pressure }; its plate allows { $working }.
harm-joint = A joint turned { $power } into heat for { $time }.
harm-lukewarm = The tank was left at { $temperature }, where germs grow.

# What to do. The screen never says that a real touch would be harmless.
caution-shock = Do not touch somebody held by a current: switch off first, then call an ambulance, give CPR if there is no breathing, and have the heart watched afterwards.
caution-shock-felt = A tingle is a warning: leave it, lock off every source, and find out why the metal is live. The same touch with wet skin can kill.
caution-burn = Cool it under running cool water for 20 minutes, and take anything that blisters to a doctor. Warn people and test the water before skin meets it.
caution-burn-child = Cool it under running cool water for 20 minutes and take the child to a doctor. Children burn in about half the time.
caution-flood = Shut the cold valve, keep off wet floors near live parts, and dry out what is soaked.
caution-element = Refill until a hot tap runs solid before any power: an element in air lasts about half a minute.
caution-arc = Work dead. An arc burns skin and eyes even where no current passes the body.
caution-meter = Check jack, dial and leads before the probes touch. Ohms only on a circuit proved dead.
caution-board = Take the element wires off before an insulation test, and never test with electronics connected.
caution-gas = Open a window and let it run off. No flame, no cigarette and no switch near the tap until it runs solid.
caution-steam = Keep everyone out and do not touch the valve. Cut the power only if the panel is reached without passing the tank, and call for help.
caution-overpressure = Never leave a tank without a working relief valve and a way for the water to expand.
caution-joint = Cut back to bright copper and make the joint to its marked torque: a hot joint can light what is around it.
caution-lukewarm = Store hot enough and mix down at the tap; local rules say how hot.

## Rules of the score: what happened, why it matters, what would have been right

account-safety = Safety
account-finding = Finding
account-repair = Repair
account-finish = Finish

rule-touched-live = Bare hands went to a live part: { $detail }.
rule-touched-live-why = House voltage across a hand can stop a heart. On a real heater this can be the last act.
rule-touched-live-right = Lock off every source, prove the meter, prove each screw dead to a proved ground, prove the meter again, then touch.
rule-shock = Somebody took a shock that injures.
rule-shock-why = Past the let-go current the hand closes on what hurts it, and a second can be too long.
rule-shock-right = Prove dead before any hand goes behind a cover. Until then gloves and eye protection, and only probes.
rule-burn = Somebody was scalded: { $detail }.
rule-burn-why = 140 °F burns through skin in about five seconds, 120 °F takes minutes.
rule-burn-right = Take the temperature before any hand, run hot water with people kept clear, and cool the tank before it drains.
rule-blast = The tank blew steam or burst.
rule-blast-why = Water above boiling under pressure is a bomb. Nobody belongs near it.
rule-blast-right = Power off only if the panel is reached without passing the tank, everybody out, call.
rule-energised-miswired = Power came on with a wire on a foreign screw: { $detail }.
rule-energised-miswired-why = A crossed wire can put a leg on the shell, bypass the limit or run both elements.
rule-energised-miswired-right = Label each wire before lifting it, land it by the diagram, check it before power.
rule-worked-live = Worked on a live part with gloves and eye protection on: { $detail }.
rule-worked-live-why = Gloves make a slip survivable, not the work allowed. Dead work is the rule.
rule-worked-live-right = Find the source, lock it off, prove dead.
rule-worked-unproved = Worked at { $detail } before it was proved dead.
rule-worked-unproved-why = It happened to be dead. A mislabelled breaker, a second source or a broken lead would have made it live.
rule-worked-unproved-right = Lock and tag, meter proved, leg to leg, every screw to a proved ground in both compartments, meter proved again.
rule-ohms-live = An ohms or insulation test met a live circuit.
rule-ohms-live-why = The reading means nothing, and the meter can fail in the hand.
rule-ohms-live-right = Volts first. Ohms only once proved dead, wires lifted.
rule-ohms-unproved = Ohms were measured before the circuit was proved dead.
rule-ohms-unproved-why = Had it been live, the reading would have lied and the meter might have failed.
rule-ohms-unproved-right = Prove dead first, then ohms.
rule-stopped-by-coach = The coach had to stop this before it hurt.
rule-stopped-by-coach-why = Nobody stands beside you on a real call.
rule-stopped-by-coach-right = Read what the coach said there, and look for it before the act next time.
rule-arc = A short circuit was made.
rule-arc-why = A wire or tool across live parts throws molten copper.
rule-arc-right = Dead and proved before any wire moves.
rule-flood = Water was let out where it does damage.
rule-flood-why = A tank holds enough to come through a ceiling.
rule-flood-right = Cold valve shut, hose to a safe drain, tank down below the opening, then open it.
rule-no-protection = A live reading was taken without gloves and eye protection.
rule-no-protection-why = Until it is proved dead everything behind a cover counts as live.
rule-no-protection-right = Gloves and eye protection on before a cover comes off, until the meter is proved again.
rule-household-not-told = Power or water went off before the household was told.
rule-household-not-told-why = People who do not know switch things back on, or open a tap at the wrong moment.
rule-household-not-told-right = Tell them what will be off, for how long, and to touch nothing.
rule-somebody-reset = Somebody switched the breaker back on.
rule-somebody-reset-why = A breaker that is only off belongs to whoever walks past.
rule-somebody-reset-right = Own lock and tag on the breaker, key in the pocket.
rule-energised-open = Power came on with covers off or wires lifted.
rule-energised-open-why = Bare live screws at knee height, in a house with people.
rule-energised-open-right = Wires landed and torqued, insulation, shields and covers on, then power.
rule-miswired = A wire was landed on a screw not its own: { $detail }.
rule-miswired-why = The heater may seem to work and run hot, or one element only, or past its limit.
rule-miswired-right = Land each wire by its label and the diagram inside the cover.
rule-hot-discharge = Water at { $detail } ran with nothing to keep people clear.
rule-hot-discharge-why = At that heat it burns in seconds.
rule-hot-discharge-right = Tell the household, hose to a safe place, thermometer first.
rule-left-hot = Left with the dials at { $detail }.
rule-left-hot-why = A child or an old person cannot pull away in time.
rule-left-hot-right = Both dials at 120 °F; anything hotter needs a mixing valve.

rule-no-finding = No finding was written.
rule-no-finding-why = A repair without a finding is a guess, even when it works.
rule-no-finding-right = Write the one thing wrong and the readings that show it, before the repair.
rule-wrong-finding = The finding was: { $detail }.
rule-wrong-finding-why = It leads to changing something that is sound.
rule-wrong-finding-right = Look for the reading that only one fault can give.
rule-wrong-cause = The right part for another cause: { $detail }.
rule-wrong-cause-why = The part gets changed, but what to prove afterwards depends on how it failed.
rule-wrong-cause-right = Read the contact both ways, hot and cold.
rule-no-evidence = The finding names no evidence.
rule-no-evidence-why = Nobody can check it, not even you next week.
rule-no-evidence-right = Name the readings that show it.
rule-evidence-leaves-others = The evidence would look the same with: { $detail }.
rule-evidence-leaves-others-why = One more reading would have told them apart.
rule-evidence-leaves-others-right = Before you write it down, ask what else would read like this, and take the reading that differs.
rule-finding-after-repair = The repair came before the finding was written.
rule-finding-after-repair-why = Written afterwards it records what was done, not what was found.
rule-finding-after-repair-right = Readings, finding, then the repair.

rule-not-cured = The complaint comes back.{ $detail }
rule-not-cured-why = The house was run on for days after the job, and the same trouble shows.
rule-not-cured-right = Change the part that the readings name, or call whoever may, and prove the repair before leaving.
rule-called-without-need = Called { $detail } for work the licence covers.
rule-called-without-need-why = The customer waits and pays twice.
rule-called-without-need-right = Do what your licence and local code allow. Stop where they do.
rule-beyond-licence = Work beyond the licence: { $detail }.
rule-beyond-licence-why = Local law decides who may do it, and insurance follows.
rule-beyond-licence-right = Make it safe, stop, call the licensed person, say what you found.
rule-wrong-words = The customer was not told what this was about.
rule-wrong-words-why = Nothing is broken; the words are the remedy.
rule-wrong-words-right = Explain what was measured and what would help.
rule-cured-by-luck = It works, but not because of what was found.
rule-cured-by-luck-why = Next time the guess costs a part and a day.
rule-cured-by-luck-right = Let the readings name the part.
rule-changed-in-vain = A sound part was changed: { $detail }.
rule-changed-in-vain-why = The customer pays for it, and the fault is still to be found.
rule-changed-in-vain-right = Test the part itself, wires off, before changing it.
rule-wrong-rating = It does not match the plate: { $detail }.
rule-wrong-rating-why = A wrong voltage or wattage heats slowly, trips, or burns out early.
rule-wrong-rating-right = Read the plate and the stamp; match volts, watts and size.
rule-burnt-element = The { $detail } element was burnt out in air.
rule-burnt-element-why = Without water around it an element is gone in half a minute.
rule-burnt-element-right = Fill until a hot tap runs solid, lift the relief valve, then power.
rule-untorqued = A joint was left without its torque: { $detail }.
rule-untorqued-why = A loose joint heats under load and chars.
rule-untorqued-right = Tighten to the marked torque with a torque screwdriver.
rule-wires-off = A wire was left off its screw: { $detail }.
rule-wires-off-why = It may touch the shell, and the heater does not work.
rule-wires-off-right = Land every wire before the covers go on.

rule-not-finished = The job was not brought to an end.
rule-not-finished-why = Somebody else finds a half-done heater.
rule-not-finished-right = Hand it over, or stop safely and call.
rule-energised-not-full = Power came on before the tank was full.
rule-energised-not-full-why = The upper element is the last to be covered, and dry it lasts half a minute.
rule-energised-not-full-right = Hot tap open, fill until it runs solid, relief valve lifted, then power.
rule-not-purged = Power came on before a hot tap had run solid.
rule-not-purged-why = Air at the top leaves the upper element dry.
rule-not-purged-right = Run the highest and the nearest hot tap until the flow is full and spits no more.
rule-relief-not-lifted = After refilling, the relief valve was not lifted.
rule-relief-not-lifted-why = Solid water there shows that the top is full, and that the valve works.
rule-relief-not-lifted-right = Stand clear, lift it briefly, see solid water, see it close.
rule-not-measured = No leg was clamped after power came back.
rule-not-measured-why = Only current proves that an element heats.
rule-not-measured-right = Cover on, clamp one leg: watts by volts, and nothing once satisfied.
rule-not-run-to-cut-out = The heater was not watched on after power came back.
rule-not-run-to-cut-out-why = A welded contact or a grounded coil shows only when the water is hot.
rule-not-run-to-cut-out-right = Run it to its cut-out, and see both legs at 0 A.
rule-leak-not-looked-for = After refilling, nobody looked for a leak.
rule-leak-not-looked-for-why = A gasket that weeps cold is a flood by morning.
rule-leak-not-looked-for-right = Dry the fittings, look again cold and once more hot.
rule-dials-left = The dials were left unequal or above 120 °F.
rule-dials-left-why = Unequal dials give odd output, high ones scald.
rule-dials-left-right = Both dials at 120 °F.
rule-covers-off = Covers were left off.
rule-covers-off-why = Live screws in reach, and thermostats that feel the room instead of the tank.
rule-covers-off-right = Insulation, shield, cover, panel front, box lid.
rule-power-left-off = Power was left off.
rule-power-left-off-why = The customer has no hot water, and the repair is not proved.
rule-power-left-off-right = Lock off, breaker on, measure, watch.
rule-lock-left-on = A lock was left on.
rule-lock-left-on-why = Only its owner may take it off, and the owner has gone.
rule-lock-left-on-right = Own lock off by own hand before handing over.
rule-left-open = A valve, tap, hose, lever or gauge was not put back.
rule-left-open-why = The house is not as it should be used.
rule-left-open-right = Cold valve open, taps and drain shut, hose and gauge off, lever down.
rule-wires-unlabelled = Lifted without a label: { $detail }.
rule-wires-unlabelled-why = Two wires of one colour, and an hour later nobody knows.
rule-wires-unlabelled-right = Label or photograph each end before it comes off.
rule-customer-not-told = The customer was not told the result.
rule-customer-not-told-why = They run the tap next, and it will be hot.
rule-customer-not-told-right = What was found, what was done, what to watch, and that the water gets hot.
rule-left-unsafe = Stopped and called, but it was left live, open or leaking.
rule-left-unsafe-why = The next person, or a child, meets it as it is.
rule-left-unsafe-right = Power locked off, covers on, water shut where it leaks, then call.

detail-call-first = This needs { $whom }.

## Sloppy statements of the trade, and what is true

debrief-saying-title = A saying that cost you here
debrief-saying-said = “{ $said }”
debrief-saying-step = Look at act { $step }
belief-bottom-first = The bottom element goes first.
belief-bottom-first-truth = Only when the top is hot already. A cold tank starts on the upper element; while that one is open, nothing ever reaches the lower.
belief-open-reads-nothing = A bad element reads nothing.
belief-open-reads-nothing-truth = An open element reads over range, OL. Zero ohms would be a short, which trips the breaker.
belief-volts-so-it-works = It has 240 V, so it works.
belief-volts-so-it-works-truth = An open element has 240 V too. Only current, or ohms with the leads off, shows that it carries.
belief-leg-to-ground-is-a-fault = 120 V to ground on an element is a ground fault.
belief-leg-to-ground-is-a-fault-truth = It is the leg that stays connected while the thermostat is open. A ground fault shows in ohms to the shell, leads off.
belief-two-legs-are-240 = Both legs read 120 V, so 240 V is there.
belief-two-legs-are-240-truth = Not if both readings are one leg: with the other dead it feeds back through an element. Measure from leg to leg.
belief-ohms-from-a-table = 4500 W must be 11.6 ohms.
belief-ohms-from-a-table-truth = Volts squared over watts: 240 V and 4500 W are 12.8 ohms. Work it out from the plate.
belief-legs-swapped = Swapping the legs saves power.
belief-legs-swapped-truth = Nothing changes: the two legs are alike. What changes is that a wire now sits on a screw not its own.
belief-bypass-the-limit = The limit may be bypassed for a first start.
belief-bypass-the-limit-truth = Never. It is what keeps a welded thermostat from boiling the tank; code requires it.
belief-bigger-breaker = A 40 A breaker stops the trips.
belief-bigger-breaker-truth = It lets the wire run hot instead. Size it from the plate: 125 % of the current, and the wire to match.
belief-drip-means-valve = The relief valve drips, so change it.
belief-drip-means-valve-truth = It is almost always doing its work: expansion in a closed system, or a static pressure too high. Read the gauge first.
belief-trip-means-limit = The limit tripped, so the limit is bad.
belief-trip-means-limit-truth = A trip is a symptom. Find the heat that ran away: a welded thermostat, a grounded element, a hot joint.
belief-proved-once-is-enough = The meter worked before, that is enough.
belief-proved-once-is-enough-truth = It may have died since: live, dead, live. Until it has been proved again nothing is proved dead.
belief-breaker-off-is-safe = The breaker is off, so it is safe.
belief-breaker-off-is-safe-truth = Off by its label. Only a reading on the metal, leg to leg and each leg to ground, says which one it was.
belief-dial-down-is-off = With the dial down it is off.
belief-dial-down-is-off-truth = A thermostat opens one leg. The other stays on every element at 120 V to the shell.
belief-dials-burn-elements = Unequal dials burn out elements.
belief-dials-burn-elements-truth = They change how much hot water there is, no more. Set both alike.
belief-ohms-with-wires-on = Ohms can be read with the wires on.
belief-ohms-with-wires-on-truth = Then other elements are read along, and a ground path with them. Both leads off, then read.
belief-no-hot-means-lower = No hot water at all: the lower element.
belief-no-hot-means-lower-truth = The lower alone leaves a third of the tank hot. None at all is the supply, the limit or the upper element.
belief-draining-needs-no-air = To drain, just open the valve.
belief-draining-needs-no-air-truth = Water leaves only as air comes in. Open a hot tap or the relief valve, and see that it has run empty.
belief-closed-at-minimum-is-welded = It stays closed at its lowest mark, so it is welded.
belief-closed-at-minimum-is-welded-truth = Not on a cold tank: the water is below the lowest mark and a sound one stays closed. Warm it, or judge by its cut-out.

## Traces and tables

trace-learner = Learner
trace-sealed = sealed
trace-unsealed = unsealed
trace-no-code = no code
trace-truth = What was wrong
