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

heater-short-30 = { $size } short, 3500 W, 240 V
heater-plain-40 = { $size }, 4500 W, 240 V
heater-tall-50-208 = { $size } tall, 4500 W, 208 V
heater-wide-80 = { $size }, 5500 W, 240 V
heater-small-20 = { $size }, one element, 1500 W, 120 V
heater-tall-50-277 = { $size } tall, 4500 W, 277 V
heater-both-50 = { $size }, both elements at once, 4500 W each, 240 V
heater-off-peak-80 = { $size }, lower element off-peak, 4500 W, 240 V
heater-board-50 = { $size }, electronic control, 4500 W, 240 V
heater-large-120 = { $size }, 5500 W, 240 V

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

wish-level-plain = plain: much tells it
wish-level-middling = middling
wish-level-hard = hard: little tells it
family-elements = elements
family-controls = thermostats, limits, dials
family-supply = breaker, supply, wires
family-hot-water = too little hot water, nothing electrical
family-leaks = leaks, pressure, relief
family-water = smell, colour, noise, gas
location-basement = in the basement
location-closet = in a closet
location-garage = in the garage
location-attic = in the attic, in a pan
location-outdoors = outdoors, in a cabinet

level-upper = upper
level-lower = lower
level-upper-left-out = upper{" "}

tap-laundry = laundry tub
tap-kitchen = kitchen tap
tap-bath = bathtub
tap-shower = shower

circuit-heater = Water heater
circuit-second-source = Load control
circuit-off-peak = Water heater, off-peak
circuit-range = { $service ->
    [wye-277] Lighting
   *[other] Range
}
circuit-dryer = { $service ->
    [wye-277] Exhaust fan
   *[other] Dryer
}

metal-copper = copper
metal-aluminium = aluminium
element-fit = { $length } long, { $mount }
mount-screw-in = screw-in
mount-four-bolt = 4-bolt flange
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
fitting-bottom-rim = bottom rim of the jacket, at the floor

writing-plate = the rating plate
writing-diagram = the wiring diagram
writing-stamp-upper = the stamp on the upper element
writing-stamp-lower = the stamp on the lower element
writing-directory = the load center’s directory
writing-dials = { $layout ->
    [single-element] the dial
    [electronic] the settings
   *[other] both dials
}

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

wire-cable-a = { $feed ->
    [neutral] branch cable, hot
   *[legs] branch cable, leg 1
}
wire-cable-b = branch cable, leg 2 (re-identified white)
wire-cable-n = branch cable, neutral
wire-cable-g = equipment ground
wire-second-a = { $feed ->
    [neutral] second cable, hot
   *[legs] second cable, leg 1
}
wire-second-b = second cable, leg 2
wire-off-peak-a = off-peak cable, leg 1
wire-off-peak-b = off-peak cable, leg 2
wire-to-box-a = { $feed ->
    [neutral] cable to the box, hot
   *[legs] cable to the box, leg 1
}
wire-to-box-b = cable to the box, leg 2
wire-whip-a = { $feed ->
    [neutral] cable from the box, hot
   *[legs] cable from the box, leg 1
}
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
wire-loose = wire { $letter }
wire-end = { $wire }, at { $screw }

part-upper-element = upper element
part-lower-element = lower element
part-upper-thermostat = upper thermostat
part-lower-thermostat = lower thermostat
part-limit = { $layout ->
    [off-peak] upper high limit
   *[other] high limit
}
part-lower-limit = lower high limit
part-breaker = { $feed ->
    [neutral] single-pole breaker
   *[legs] two-pole breaker
}
part-fuse = { $feed ->
    [neutral] fuse
   *[legs] pair of fuses
}
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
fault-F26 = A timer or the utility’s relay keeps the heater off
fault-F27 = 240 V heater on a 208 V supply
fault-F28 = Both poles of the breaker on one leg
fault-F29 = Element of another rating than the plate’s
fault-F30 = Lower thermostat fed from U2 instead of U4
fault-F31 = Equipment ground off, and an element leaks
fault-F32 = Wet compartment: a weeping gasket and a track to the shell
fault-F33 = Thermostat not lying flat on the shell
fault-F34 = Temperature set too low
fault-F35 = Temperature set too high
fault-F36 = Upper and lower set unequal
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
fault-F59 = Gas in the lines of a house that stood empty
fault-F60 = Thermistor open or shorted
fault-F61 = Relay of the board stuck or dead
fault-F62 = Board still locked out, its cause gone
fault-F63 = Frozen pipe in a house shut up for winter
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
fault-F76 = Element whose coil parts when it is warm
fault-F77 = Thermostat contact that makes only at times
fault-none = Nothing is wrong

remedy-F01 = Change the lower element for one that matches the plate, with a new gasket.
remedy-F02 = Change the upper element for one that matches the plate, with a new gasket.
remedy-F03 = Replace the heater: a tank that has rusted through cannot be mended.
remedy-F04 = Nothing to change. Explain, and advise a larger heater, a second one, or less flow.
remedy-F05 = Change the upper thermostat, then prove that both poles of the limit open.
remedy-F06 = Change the lower thermostat, then prove that both poles of the limit open.
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
remedy-F18 = Prove the elements clear of the shell, close the breaker once, clamp the current and watch.
remedy-F19 = Change the breaker. That is work inside the load center.
remedy-F20 = Make the hot lug again, or change the breaker for one of its rating. That is work inside the load center.
remedy-F21 = Change both fuses for the plate’s rating, find what melted one, and clamp both legs.
remedy-F22 = Nothing to change here. Lock the heater off and call the utility at once.
remedy-F23 = Cut the splice back to bright copper and make it again, to the marked torque.
remedy-F24 = Cut the wire back to bright copper, make the joint again, torque it.
remedy-F25 = Fit connectors rated for aluminium and copper, torqued. Many places reserve aluminium for an electrician.
remedy-F26 = A timer: set its clock right; if its contacts do not make, change it. A relay is the utility’s, and sealed: call the utility.
remedy-F27 = Nothing is broken. Explain the three quarters of power, or fit elements rated for 208 V.
remedy-F28 = Move a two-pole breaker to a space where its poles sit on both legs; put a two-pole breaker in the place of a tandem.
remedy-F29 = Change the element for one that matches the plate, with a new gasket.
remedy-F30 = Land the wire of D1 on U4, as the diagram has it, and prove both cut-outs.
remedy-F31 = Lock off, make the equipment ground whole, change the leaking element, prove the shell at 0 V. Work for an electrician.
remedy-F32 = Change the gasket on a cleaned seat, dry the compartment, and see the insulation back before power.
remedy-F33 = Press it flat under its clip, insulation and cover back on, and prove its cut-out.
remedy-F34 = Set it to { $safe-heat }.
remedy-F35 = Set it to { $safe-heat }, and advise a mixing valve for anything hotter.
remedy-F36 = Set both to { $safe-heat }.
remedy-F37 = Change the dip tube and flush the strainers.
remedy-F38 = Find the fixture by shutting the stops one by one, and change its cartridge.
remedy-F39 = Change the mixing valve and set it to { $safe-heat }.
remedy-F40 = Put each connection on its own nipple.
remedy-F41 = Flush the tank under pressure until the drain runs clear, and change the crusted lower element with its gasket.
remedy-F42 = Nothing to change. Explain what colder water asks of a heater, and advise a mixing valve or less flow.
remedy-F43 = Find the leak and mend the hot line.
remedy-F44 = Change the pump’s timer or the check valve, whichever lets the loop run.
remedy-F45 = Fit an expansion tank charged to the static pressure. The relief valve did its work.
remedy-F46 = Change the regulator and set it below { $street-limit }.
remedy-F47 = Flush it twice; if it still weeps change it for one set no higher than the tank’s working pressure.
remedy-F48 = Power off at once. Change upper thermostat and limit, then prove the cut-out.
remedy-F49 = Change the expansion tank, charged to the house’s pressure.
remedy-F50 = Change the gasket on a cleaned seat.
remedy-F51 = Change the drain valve.
remedy-F52 = Change the nipples and unions.
remedy-F53 = Nothing to change. Wipe it dry, see it stay dry once the tank is hot, and advise air.
remedy-F54 = Change the anode rod for one of aluminium with zinc, and flush; tell the customer that the smell may come back once the house has stood empty.
remedy-F55 = Change the anode rod; tell the customer what a rusting shell may come to, and that brown water may come again once the house has stood empty.
remedy-F56 = Change the anode rod.
remedy-F57 = Take the pipe out of its straps and hang it in padded clips.
remedy-F58 = Change the nipples.
remedy-F59 = Open the windows, no flame and no spark, and run a hot tap until it stops spitting.
remedy-F60 = Change the sensor.
remedy-F61 = Change the board, then prove that it opens.
remedy-F62 = See that the tank is full at every tap and the tray dry, then take the board’s supply away and give it back.
remedy-F63 = Keep the power off. Thaw the pipe with warm air, look for splits, fill and purge; only then close the breaker.
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
remedy-F76 = Change the element; it reads good while it is cool.
remedy-F77 = Change the thermostat, then watch it close and open more than once.

advice-demand-exceeds-capacity = The house asks for more hot water than this heater can make; a larger one, a second one or less flow would help.
advice-low-supply-voltage = The building has 208 V; a heater rated 240 V makes three quarters of its power on it. Accept it, or fit elements rated 208 V.
advice-safe-temperature = Keep it set to { $safe-heat }; hotter water burns, and anything hotter needs a mixing valve at the tap.
advice-cold-main = Colder water comes in than usual: it takes longer to heat and goes less far; nothing in the heater is wrong.
advice-damp-air = Damp air settles on cold metal while cold water comes in; let air to it. Nothing leaks.
advice-nothing-wrong = The heater is sound; this is what was measured.

observation-mislabelled-breaker = a breaker feeds something other than its label says
observation-second-source = a second source feeds the heater
observation-broken-lead = a meter lead was broken
observation-no-expansion-control = a closed system without expansion control
observation-oversized-breaker = a breaker larger than its wire allows
observation-plastic-discharge = a discharge pipe of plastic that hot water softens
observation-uphill-discharge = a discharge pipe that rises, so that water stands in it
observation-no-dielectric = steel on copper without dielectric fittings
observation-no-pan = no pan under a heater where a leak would do harm below
observation-capped-discharge = a capped discharge pipe
observation-blocked-relief = a relief valve that lets nothing out
observation-bridged-limit = a bridged high limit
observation-other-element = an element other than the plate asks for
observation-scalding-water = water hotter than { $safe-heat } at the tap
hearsay-sediment-bill = “I have heard that sediment makes the electric bill higher. Is that so?”
hearsay-bond-of-its-own = “I have heard that the tank needs a number 6 bonding wire of its own. Is that so?”
hearsay-warm-is-clean = “I have heard that at { $safe-heat } nothing that makes people ill can live in there. Is that so?”
hearsay-seven-tenths = “I have heard that the first-hour rating is seven tenths of the tank. Is that so?”
hearsay-recovery-sum = “I have read: gallons an hour are gallons times 8.33 times degrees, over watts. Is that so?”
hearsay-hot-burns = “I have heard that water at { $burning-heat } burns within seconds. Is that so?”
hearsay-dry-burns = “I have heard that an element switched on in an empty tank burns out. Is that so?”
hearsay-open-pipe = “I have heard that the relief valve’s pipe must never be closed off. Is that so?”
hearsay-rod-is-eaten = “I have heard of a rod in there that is eaten so that the tank is not. Is that so?”
hearsay-winter-is-less = “I have heard that the same heater gives less hot water in winter. Is that so?”

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
says-not-too-hot = No, it is never too hot.
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
says-touched-dial = { $who } had a look at it, and changed how hot it is set, I believe.
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
says-people = It’s { $adults ->
    [one] one grown-up
   *[other] { $adults } grown-ups
}{ $children ->
    [0] {" "}here.
    [one] {" "}and one child here.
   *[other] {" "}and { $children } children here.
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
    [one] The heater is about a year old.
   *[other] The heater is about { $years } years old.
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
act-try-start = Tried the start: turned it up, listened
act-lock-on = Own lock and tag on breaker { $slot }
act-lock-off = Lock and tag off breaker { $slot }
act-move-breaker = Moved breaker { $slot } to a space on both legs
act-box-handle-on = Box in the line closed
act-box-handle-off = Box in the line opened
act-box-lock-on = Own lock and tag on the switch in the line
act-box-lock-off = Lock and tag off the switch in the line
act-pull-fuse = { $feed ->
    [neutral] Pulled the fuse
   *[legs] Pulled the fuse of { $leg }
}
act-put-fuse = { $feed ->
    [neutral] Put the fuse back
   *[legs] Put the fuse of { $leg } back
}
act-test-fuse = { $feed ->
    [neutral] Ohms through the fuse, out of its clips
   *[legs] Ohms through the fuse of { $leg }, out of its clips
}
act-set-clock = Set the timer’s clock to the time of day
act-portable-on = Plugged a portable heater of 1500 W into a receptacle of { $leg }
act-portable-off = Pulled the portable heater out of the receptacle of { $leg }
act-relabel = Corrected the directory: breaker { $slot } feeds { $feeds }
act-cover-off = Off: { $cover }
act-cover-on = On: { $cover }
act-meter = { $function }: red { $red }, black { $black }
act-ventilate = Windows opened, flames and sparks kept away
act-thaw = Pipe warmed with warm air
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
act-clamp-both = { $feed ->
    [neutral] Clamp around hot and neutral together
   *[legs] Clamp around both legs together
}
act-press-reset = Pressed the limit’s button
act-lift = Lifted { $end }
act-label = Labelled { $end }
act-land = Landed { $end } on { $screw }, hand tight
act-land-torqued = Landed { $end } on { $screw }, torqued
act-remake = Made again: { $end }, hand tight
act-remake-torqued = Cut back and made again, torqued: { $end }
act-dial = { $layout ->
    [electronic] Set the { $level } zone to { $to }
   *[other] Turned the { $level } dial to { $to }
}
act-seat = Pressed the { $level } thermostat flat against the shell
act-main-shut = Main valve shut
act-main-part = Main valve { $percent } % open
act-main-open = Main valve open
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
act-let-them-use = Let the household use hot water for { $time }
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
act-part-pipes = Pipes undone at the nipples
act-carry-on = Old heater carried out, two at it
act-carry-off = Old heater carried out alone
act-join-on = Pipes joined through dielectric nipples
act-join-off = Pipes joined, copper on bare steel
act-reuse-relief = Old relief valve with its pipe put in again
act-finding = Finding written: { $fault }
act-advise = Told the customer: { $advice }
act-report = Reported: { $what }
act-stop-and-call = Stopped, and called { $whom }
act-agree-cost = Named the price of the work, and they agreed
act-answer-so = Told them: that is so
act-answer-not-so = Told them: that is not so
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
shown-nobody-drew = Nobody drew hot water.
shown-quiet = Nothing happened that you could notice.
shown-no-cut-out = { $hours ->
    [0] Nothing to wait for: no control calls for heat.
   *[other] No click in { $hours } hours.
}
shown-charge = { $air } of air
shown-charge-water = Water comes out of the air valve.
shown-plate = { $nominal }, { $at-once ->
    [0] one element { $rating }
    [1] both elements { $rating }, not both at once
   *[other] both elements { $rating }, both at once
}, working pressure { $working }
shown-diagram = The diagram shows where each wire belongs.
shown-label = { $slot }: { $circuit }, { $amps } A
shown-label-more = { $before }; { $next }
shown-stamp = Stamp on the { $level } element: { $rating }
shown-dials = { $layout ->
    [single-element] Dial { $upper }
    [electronic] Upper zone { $upper }, lower zone { $lower }
   *[other] Upper dial { $upper }, lower dial { $lower }
}
shown-non-contact-sounds = The non-contact tester sounds.
shown-non-contact-silent = The non-contact tester is silent. That does not show it is dead.
shown-refused = Not done. { $why }
shown-stopped = The coach stopped this before it hurt. { $harm }
shown-bucket = { $volume } at { $flow }; { $first } at first, { $last } at the end.
shown-bucket-fell = { $volume } at { $flow }; { $first } at first, { $last } at the end; { $fall } lower after { $after }.
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
refused-which-wire = It hung off among others without labels: { $end }. Nobody can see which wire it is, so there is nothing to write. Find out with the ohmmeter where it goes.
refused-out-of-reach = That wire does not reach { $screw }.
refused-locked = A lock holds it off.
refused-sealed = The utility has sealed it. It is theirs to open.
refused-no-hasp = Nothing on it takes a lock: a control is no isolation.
refused-fuse-in = The fuse is in its clips. Pull it first, or read across the switch.
refused-not-off = It has to be off before a lock goes on.
refused-tank-not-drained = Water stands above the opening. It has to fall below { $percent } % first.
refused-other-mount = It does not suit the opening: an element either screws into a 1-inch thread or sits behind four bolts. Look at the old one.
refused-too-long = It is longer than the tank is wide: its end touches before the gasket seats.
refused-under-pressure = The tank is still under pressure.
refused-main-open = It sits before the heater's valve: close the house's main valve first.
refused-pipes-on = The pipes are still on its nipples.
refused-heater-stands = The old heater still stands there.
refused-no-gauge = The gauge is not on.
refused-no-flow = Nothing comes from that tap.
refused-nothing-to-reach = There is nothing to reach from here.
refused-out-of-range = That number makes no sense here.
refused-no-such-step = There is no step { $step } in the log yet.
refused-over = The job is over.
refused-same-point = Both leads are on one point.

noticed-breaker-tripped = Breaker { $slot } trips with a clack.
noticed-somebody-reset = Somebody of the house switched breaker { $slot } on. Nothing held it off.
noticed-box-closes = A clack in a line to the heater: contacts close.
noticed-box-opens = A clack in a line to the heater: contacts open.
noticed-click = A click from the { $level } control.
noticed-relief-runs = The relief valve runs.
noticed-flooding = Water spreads on the floor: about { $volume } so far.
noticed-bang = A bang from inside the tank, and a burnt smell.
noticed-drain-stopped = The drain stands still though water is left: no air gets in.
noticed-tank-empty = The drain has run out.
noticed-runs-solid = The { $tap } runs full and steady, no more air.
noticed-low-battery = The meter shows its low-battery sign: its readings may be false.
noticed-flash = A flash and a bang at { $at }.
noticed-again = { $noticed } ({ $count } times)

sight-ordinary = Nothing out of the ordinary.
sight-breaker = Breaker { $slot } is { $handle }.
sight-breaker-locked = Breaker { $slot } is { $handle }, a lock on it.
sight-box-shut = { $kind } stands in the line, its door shut.
sight-box-on = { $kind } stands in the line, closed.
sight-box-off = { $kind } stands in the line, open.
sight-box-locked = { $kind } stands in the line, open, a lock on it.
sight-off-peak-on = The utility’s sealed relay sits at the head of the off-peak cable; its flag shows closed.
sight-off-peak-off = The utility’s sealed relay sits at the head of the off-peak cable; its flag shows open.
sight-box-hours = Its clock shows { $shows }. It is off from { $from } until { $until }.
sight-fuse-out = { $feed ->
    [neutral] The fuse is out of its clips.
   *[legs] The fuse of { $leg } is out of its clips.
}
sight-portable-dark = The portable heater on { $leg } stays dark and cold.
sight-portable-faint = The portable heater on { $leg } glows faintly and is hardly warm.
sight-portable-full = The portable heater on { $leg } glows and warms as it should.
sight-tandem = Breaker { $slot } is a tandem: two narrow handles in one space, with no tie between them.
sight-one-leg = Both poles of breaker { $slot } sit on spaces of one leg.
sight-cable = The cable is { $awg } AWG { $metal }.
sight-cable-unrated = The cable is { $awg } AWG { $metal }, in connectors marked for copper only.
sight-charred = Charred: { $end }.
sight-browned = Browned by heat over its contact { $contact }.
sight-lifted = Off its screw: { $end }.
sight-crossed = On { $on } instead of its own screw: { $end }.
sight-button-proud = The limit’s button stands proud.
sight-button-in = The limit’s button is in.
sight-limit-bridged = A piece of wire bridges each pole of the limit.
sight-lower-button-proud = The lower limit’s button stands proud.
sight-lower-button-in = The lower limit’s button is in.
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
sight-discharge-metal = The discharge pipe is of metal and falls to an open end above the floor.
sight-discharge-plastic = The discharge pipe is of thin white plastic.
sight-discharge-uphill = The discharge pipe rises before it falls.
sight-discharge-capped = A cap closes the end of the discharge pipe.
sight-dielectric = Dielectric fittings join steel and copper.
sight-no-dielectric = Copper is screwed straight onto steel, green and brown at the joint.
sight-pan = The heater stands in a pan with a drain.
sight-no-pan = The heater stands on bare boards, no pan.
sight-pipes-off = The pipes are off the nipples: their ends are open.
sight-open-port = No relief valve: its port is open.
sight-no-heater = No heater stands here.
sight-rust-streak = A streak of rust runs down the jacket, dry.
sight-old-soot = Old soot lies behind the cover.
sight-lime-crust = The end of the discharge pipe wears a dry crust of lime.
sight-condensate = Beside the heater a thin plastic line out of the wall drips, cold.
sight-flakes = White flakes in the strainer.
sight-tap-dry = Nothing comes from the { $tap }.
sight-tap-runs = The { $tap } runs at { $flow }.
sight-tap-spits = The { $tap } spits air and water.
sight-drain-runs = The drain runs at { $flow }.
sight-drain-stands = Nothing comes from the drain.
sight-lever-solid = Solid water from the relief valve.
sight-lever-airy = Air, then spitting, from the relief valve.
sight-used-well = At { $at } the { $tap } ran for { $ran }: good, they say.
sight-used-ran-cold = At { $at } the { $tap } ran for { $ran }: cold after { $after }, they say.
sight-used-lukewarm = At { $at } the { $tap } ran for { $ran }: never hot enough, they say.
sight-used-never-warm = At { $at } the { $tap } ran for { $ran }: never warm, they say.
sight-used-too-hot = At { $at } the { $tap } ran for { $ran }: too hot for a hand, they say.
sight-used-unfelt = At { $at } a machine took hot water at the { $tap } for { $ran }.
sight-used-spat = At { $at } the { $tap } ran for { $ran }: it spat air, they say.
sight-used-dry = At { $at } nothing came from the { $tap }, they say.
sight-lever-nothing = Nothing comes from the relief valve.
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
sight-rod-worn = The anode rod, { $metal }, is worn: its core is bare over { $bare } of { $length }.
sight-meter-turns = The water meter’s small dial turns; it reads { $reading }.
sight-meter-stands = The water meter stands still; it reads { $reading }.
sight-off-the-shell = The { $level } thermostat stands off the shell.
sight-limit-off-the-shell = The { $level } limit stands off the shell.
sight-scorched = The { $level } element is scorched, its plating gone.
sight-water = Water at about { $temperature }.

## Shell

window-doors = Practise a service call
window-drill = Job
window-debrief = Debrief
window-instructor = Instructor
window-exam = Exam
window-atlas = Fault atlas
window-sources = Where numbers come from
shell-under-way = The job under way
shell-words-coming = Fetching the words of this page …
shell-words-failed = The words of this page could not be fetched. A drill can be worked without them; load the page again for the rest.
shell-caution = Practice on a simulated heater. On a real one follow local code and work under a licensed person.
shell-close = Close
shell-clear = Finish and clear this device
shell-clear-asked = This removes the job and its record from this browser. It cannot be undone.
shell-to-doors = To the doors
shell-skip = Skip to the job
shell-to-meter = To the meter
shell-units-us = Units: °F, gal, psi
shell-units-si = Units: °C, L, kPa
shell-language = Language
shell-language-failed = The words of that language could not be fetched. Check the connection and choose again.
keeping-blocked = This browser keeps nothing here (a private window, a frame or a setting). Finish without reloading and save the record as a file.
keeping-full = The browser’s storage is full: what you do from now on is lost on a reload. Save the record as a file at the end.
keeping-elsewhere = Another tab of this browser has taken a job, and that one is kept. What you do here is lost on a reload.
keeping-unopened = A job is kept on this device, but it cannot be opened: { $why }
keeping-unreadable = its record cannot be read by this page. Reload for the newest page; if that does not help, save what is there as a file.
keeping-broken = The kept job could not be read from step { $step } on: the steps before it were restored, the rest was set aside as it is.
unread = Of an earlier job on this device something could not be read. It is kept as it is: save it as a file for your instructor or whoever looks after the page, then clear it.
unread-save = Save what could not be read
unread-clear = Clear it

## The drill's screen

job-customer-says = What the customer says
job-ask = Ask
job-go-to = Go to
job-plate = Rating plate
job-log = Job log
job-carried = Worked again from act { $step }, as practice; the record says so
job-take-back = Take back the last act
job-taken-back = { $count ->
    [one] { $count } act taken back; the record says so
   *[other] { $count } acts taken back; the record says so
}
pocket-title = Pocket card: volts, watts, amperes, ohms
pocket-watts = W
pocket-volts = { $volts } V
pocket-amps = { $amps } A
pocket-ohms = { $ohms } Ω
pocket-rules = Amperes are watts by volts; ohms are volts times volts by watts. On another voltage than the stamp’s the watts go with the square of the volts: three quarters at 208 V of what 240 V gives.
pocket-caution = A guide for practice. The plate and the stamp of the heater at hand come first.
job-meter = Meter
job-kit = Kit
job-suspects = Your suspects
job-finding = Finding
job-time = Let time pass
job-tell = Tell the customer
job-call = Stop here and call …
job-call-asked = Stop the work, leave it safe, and call somebody. The job ends here. Whom?
job-hint = Ask for a hint
job-hint-short = Hint
job-hand-over = Hand over the job
job-hand-over-short = Hand over
job-hand-over-asked = Hand over the job now? Nothing can be done after it.
job-not-yet = Not yet
job-whole-drawing = Whole drawing
job-nothing-yet = Nothing done yet.
job-seen = Seen
job-debrief = To the debrief
job-opening = Opening the job that this device keeps …
job-no-job = No job is under way.
job-licence = Your licence
job-not-looked = not looked at yet
job-left = Customer and job log
job-right = Meter, kit and notes
job-bench = Drawing and place
job-the-job = The job
job-sections = Sections
job-clock = Time of day
clock-day = day { $day } { $time }
job-read-plate = Read the rating plate
job-plate-storage = Storage
job-plate-volts = Supply
job-plate-elements = { $layout ->
    [single-element] Element
   *[other] Upper / lower element
}
job-plate-mount = Length, mount
job-plate-both = Both at once
job-plate-circuits = Circuits
job-plate-control = Control
job-plate-pressure = Working pressure
job-no = no
job-yes = yes
job-tell-household = Power and water will be off: touch nothing
job-agree-cost = The price of the work, and whether they agree
job-they-ask = They ask
job-is-so = That is so
job-is-not-so = That is not so
job-tell-result = What was found and done; hot water
job-advise = Advise
job-report = Report something seen
job-title = Service call { $call } · { $house } { $street }
job-code = Drill code { $code }
job-ended-handed-over = The job is handed over.
job-ended-called = The job is over: you stopped and called { $whom }.
job-ended-injured = The job is over: somebody was hurt.
job-ended-time-out = The job is over: its time ran out.
job-ended-clock-out = The job is over: time up by the clock on the wall.
tab-call = Call
tab-heater = Heater
tab-meter = Meter
tab-kit = Kit
tab-log = Log
standing-open = open
standing-likely = likely
standing-out = out
hint-ask = Ask the customer first: when it began, how it fails, who touched it.
hint-plate = Read the rating plate. Volts and watts say what you should measure.
hint-watch = Look, listen and measure while it still runs: some things show only under power.
hint-tell = Tell the household that power and hot water will be off, and to touch nothing.
hint-lock = Before a hand goes in: breaker off, your own lock and tag on it, then try the start.
hint-prove = Prove the meter on a source you know is live. A dead meter reads 0 V on everything.
hint-dead = { $feed ->
    [neutral] Show it dead: hot to neutral, then each of them and every screw you will touch to a ground you proved. Then prove the meter again. Until then it counts as live.
   *[legs] Show it dead: leg to leg, then each leg and every screw you will touch to a ground you proved. Then prove the meter again. Until then it counts as live.
}
hint-find = Which two suspects are left? Choose the one reading that would differ between them. Lift a wire where another path would answer for the part.
hint-repair = You have a finding. Change that and nothing else, with what the plate asks for.
hint-refill = Water before power: fill with a hot tap open until it runs full and steady, without air.
hint-show = Prove the repair: volts and amps while it heats, then wait for the cut-out and see the current gone.
hint-result = Tell the customer what was found, what was done, and that the water will be hot.
hint-hand-over = Covers on, no leak, set to { $safe-heat }: if so, hand over.
plate-electronic = electronic, two sensors
plate-watts = { $layout ->
    [single-element] { $watts } W
   *[other] { $watts } / { $watts } W
}
plate-supply = { $volts } V 1Ø
plate-supply-neutral = { $volts } V 1Ø, hot and neutral
plate-two-circuits = two, lower off-peak

## Cautions that the riskiest acts carry

caution-act-panel-front = The bus behind the front stays live with every breaker off. Many places reserve this work.
caution-act-insulation = 500 V on the leads. Only on a circuit proved dead, with hands off the metal.
caution-act-power = Before power: tank full, covers on, nobody’s lock on it. An element in air burns out in seconds.
caution-act-hot-water = The water can scald. Keep people clear of the outlet.
caution-act-replace = Only dead, locked and proved; water work only drained below the opening.
caution-act-portable = On a loose neutral this load drives the other leg’s volts up. Read both legs, then unplug it at once.

## Meter, kit, van and notes

dial-volts = V AC
dial-low-volts = V AC low imp.
dial-ohms = Ohms
dial-continuity = Continuity
dial-insulation = Insul. 500 V
dial-amps = A AC
dial-clamp = Clamp A
clamp-both-legs = { $feed ->
    [neutral] hot and neutral of the branch cable
   *[legs] both legs of the branch cable
}
clamp-pair = { $first } and { $second }
kit-meter-dial = Meter's dial
kit-place-leads = Place the leads first
kit-place-clamp = Choose a wire for the clamp first
kit-take-reading = Take the reading
kit-over = OL
kit-tone = tone
kit-no-tone = no tone
kit-live-volts = V live
kit-nowhere = not placed
kit-around = Clamp around
kit-around-too = and around
kit-no-other = no other wire
kit-low-battery = low battery
kit-prove = Prove and prepare the meter
kit-prove-receptacle = Prove: live receptacle
kit-prove-unit = Prove: proving unit
kit-zero-leads = Zero the leads
kit-spare-leads = Spare leads, new fuse
kit-jack-volts = Red lead to the volts jack
kit-jack-amps = Red lead to the amperes jack
kit-change-battery = Fresh battery
kit-lock-and-tag = Lock and tag
kit-gloves = Gloves
kit-eyes = Eye protection
kit-hose-kit = Hose
kit-gauge-kit = Pressure gauge
kit-wait = Wait
kit-wait-verb = Wait
kit-wait-cut-out = Wait for the cut-out
kit-use-water = Let the household use water
kit-use-water-verb = Let them
kit-let-them-use = Let them use water
kit-fit = Fit
kit-fit-part = Fit { $part }
kit-the-one = the one that fits
kit-add-suspect = Add a suspect
kit-choose = Choose
kit-nothing-wrong = Nothing wrong with the heater
kit-wrong = What is wrong
kit-write-finding = Write the finding
kit-written = Written down: { $fault }
kit-red-free = Red free
kit-black-free = Black free
kit-red-at = Red on { $point }
kit-black-at = Black on { $point }
kit-red-lead-on = Red lead on
kit-black-lead-on = Black lead on
kit-seat-cleaned = seat cleaned
kit-seat-as-it-was = seat as it was
kit-length = Element length
kit-length-short = short
kit-length-middle = middle
kit-length-long = long
kit-mount = Element mount
kit-option-element = { $rating }, { $length }, { $seat }
kit-option-expansion-tank = { $volume }, charged to { $charge }
kit-cost = Parts so far: ${ $dollars }
kit-cost-asked = Parts so far: ${ $dollars }. They want to be asked before it goes over ${ $most }.
kit-evidence = Step { $step } is evidence
kit-evidence-count = { $count ->
    [0] No step ticked as evidence. Tick the readings in the log that show it.
    [one] 1 step ticked as evidence.
   *[other] { $count } steps ticked as evidence.
}
kit-out-since = out { $since }
kit-drop-suspect = Drop: { $fault }

## Acts offered at the places

do-choose-place = Choose a place on the drawing or from the list: the details and everything that can be done there open here.
do-senses = With your senses
do-look = Look
do-listen = Listen
do-smell = Smell
do-covers = Covers
do-covers-off = All off, down to the screws
do-covers-on = All back on
do-breakers = Breakers
do-lockout = Lock, tag, try
do-portable = Portable heater, 1500 W
do-behind-front = Behind the front
do-move-breaker = Move a breaker to a space on both legs
do-move = Move
do-box-handle = Handle of the switch
do-box-lock = Lock and tag on the switch
do-fuses = Fuses
do-timer = Lever of the timer
do-box-clock = Clock
do-set-clock = Set the clock to the time of day
do-writings = Read
do-controls = Controls
do-flange = Element flange and wall
do-pipes = Pipes and fittings
do-fittings = Fittings and floor
do-lever = Lever
do-drain-valve = Drain valve
do-pressure = Pressure
do-try-start = Try the start
do-read-directory = Read the directory
do-correct-label = Correct the directory
do-write = Write
do-write-label = Write the corrected label
do-read-dials = { $layout ->
    [single-element] Read the dial
    [electronic] Read the settings
   *[other] Read both dials
}
do-read-stamp = Read the element's stamp
do-read-diagram = Read the wiring diagram
do-press-reset = { $layout ->
    [off-peak] Press the reset buttons
   *[other] Press the reset button
}
do-seat = Press the thermostat flat
do-dial = Dial
do-set = Set
do-turn = Turn
do-turn-dial = Turn the dial
do-feel-flange = Feel the flange
do-wipe-flange = Wipe the flange dry
do-thermometer-shell = Thermometer on the tank wall
do-thermometer-cold = Thermometer on the cold pipe
do-thermometer-relief = Thermometer on the pipe
do-thermometer-drain = Thermometer in the drain's water
do-thermometer-tap = Thermometer
do-thermometer-point = Thermometer here
do-thermometer-hot = Thermometer on the pipe at the nipple marked hot
do-return-valve = Valve of the recirculation loop
do-thaw = Thaw the pipe with warm air, no flame
do-ventilate = Open the windows, no flame
do-thermometer-return = Thermometer on the loop’s return
do-water-meter = Water meter
do-main-valve = House main valve
do-read-water-meter = Read it and watch its small dial
do-sample-hot = A glass from hot alone
do-sample-cold = A glass from cold alone
do-look-at-anode = Unscrew the anode rod and look at it
do-change-heater = Change the whole heater
do-part-pipes = Undo the pipes
do-carry-helped = Carry it out, two people
do-carry-alone = Carry it out alone
do-join-dielectric = Join the pipes, dielectric nipples
do-join-bare = Join the pipes, bare copper on steel
do-reuse-relief = Put the old relief valve in
do-stops = Stops under it shut
do-tank-charge = Charge of the expansion tank
do-feel-relief-pipe = Feel the discharge pipe
do-feel-water = Hand in the water
do-hose = Hose on the drain
do-gauge = Pressure gauge on
do-read-gauge = Read the gauge
do-run = Run
do-point = Point
do-pick-point = Pick a screw or a wire end
do-touch = Touch by hand
do-non-contact = Non-contact tester
do-clamp-wire = Clamp around this wire
do-land = Land
do-land-elsewhere = On another screw
do-land-on-another = Land on another screw
do-upper-plug = Upper sensor’s plug in the board
do-lower-plug = Lower sensor’s plug in the board
do-upper-zone = Setting, upper zone
do-set-upper-zone = Set the upper zone
do-lower-zone = Setting, lower zone
do-set-lower-zone = Set the lower zone
do-cover-off = { $cover } off
do-cover-on = { $cover } back on
do-breaker-on = Breaker { $slot } on
do-breaker-off = Breaker { $slot } off
do-box-close = Close it
do-box-open = Open it
do-pull-fuse = { $feed ->
    [neutral] Fuse out
   *[legs] Fuse of { $leg } out
}
do-test-fuse = { $feed ->
    [neutral] Ohms through the fuse
   *[legs] Ohms through the fuse of { $leg }
}
do-portable-leg = In a receptacle of { $leg }
do-space = Breaker { $slot }
do-lock-and-tag = Lock and tag on { $slot }
do-relabel = { $slot } feeds: { $feeds }
do-shut = Shut
do-quarter = A quarter
do-half = Half
do-full = Full
do-feel = Feel: { $fitting }
do-wipe = Wipe dry: { $fitting }
do-lever-up = Lift the lever
do-lever-down = Let the lever go
do-bucket = Into a bucket, { $tap }
do-run-bucket = Run into a bucket, { $tap }
do-red-here = Red here
do-black-here = Black here
do-lift = Lift: { $wire }
do-label = Label: { $wire }
do-remake = Cut back and make again, by feel: { $wire }
do-remake-torqued = Cut back and make again, torqued: { $wire }
do-land-by-feel = Land on { $screw }, by feel: { $wire }
do-land-torqued = Land on { $screw }, torqued: { $wire }
do-screw-torqued = { $screw }, torqued
do-screw-by-feel = { $screw }, by feel

## The drawing

sheet-drawing = Drawing of the job
sheet-cold-valve = Cold shut-off
sheet-main-valve = House main
sheet-relief-short = Relief valve
sheet-drain-short = Drain
sheet-van-short = Van
sheet-all-shut = all shut
sheet-sensor = sensor
sheet-slot = { $slot }  { $circuit } { $amps } A
sheet-slot-unread = { $slot }  label not read
sheet-inside-1 = inside
sheet-inside-2 = not seen
sheet-hot-pipe-1 = Hot
sheet-hot-pipe-2 = to the house
sheet-box-switch-1 = Fused
sheet-box-switch-2 = switch
sheet-box-timer = Timer
sheet-box-relay-1 = Utility
sheet-box-relay-2 = relay
sheet-relay = Relay
sheet-box-locked = locked off
sheet-box-closed = closed
sheet-box-open = open
sheet-shut = shut
sheet-open = open
sheet-part-open = { $percent } % open
sheet-upper-cover = { $layout ->
    [single-element] Cover
   *[other] Upper cover
}
sheet-lower-cover = Lower cover
sheet-handle = { $slot }: { $handle }
sheet-handle-locked = { $slot }: { $handle }, locked
sheet-cover-on = on
sheet-insulation-in = off, insulation in
sheet-shield-in = off, shield in
sheet-screws-bare = screws bare
sheet-wires-lifted = { $count ->
    [one] 1 wire lifted
   *[other] { $count } wires lifted
}
sheet-lever-up-runs = lever up, runs
sheet-lever-up = lever up
sheet-relief-runs = water runs out
sheet-pipe-dry = pipe dry
sheet-no-relief = none, port open
sheet-drain-runs = runs
sheet-drain-stands = open, stands
sheet-drain-shut = shut
sheet-loop = Return loop
sheet-pump-hums = pump hums
sheet-pump-rests = pump rests
sheet-hose-on = hose on
sheet-no-hose = no hose
sheet-tap-dry = { $tap }: dry
sheet-tap-spits = { $tap } spits
sheet-tap-runs = { $tap } runs
sheet-tap-more = { $before }, { $next }
sheet-detail = Detail: { $place }
sheet-on = { $cover } on
tap-short-laundry = laundry
tap-short-kitchen = kitchen
tap-short-bath = bath
tap-short-shower = shower

title-customer = Customer
title-load-center = Load center
title-in-line-box = Box in the line
title-junction-box = Junction box
title-heater-top = Heater, top
title-upper-compartment = { $layout ->
    [single-element] Compartment
   *[other] Upper compartment
}
title-lower-compartment = Lower compartment
title-relief = Relief valve
title-drain = Drain and floor
title-taps = Taps
title-van = Parts van

point-full = { $mark }, { $what }
point-end = bare end of { $end }
point-labelled = Labelled
point-charred = Charred
point-red-lead = Red lead here
point-black-lead = Black lead here
mark-shell = shell
mark-pipe = pipe
mark-wire = wire at { $screw }
point-M1 = bus, leg 1
point-M2 = bus, leg 2
point-N = neutral bar
point-G = ground bar
point-B1 = { $feed ->
    [neutral] heater breaker, load screw
   *[legs] heater breaker, load screw of pole 1
}
point-B2 = heater breaker, load screw of pole 2
point-S1 = { $feed ->
    [neutral] second breaker, load screw
   *[legs] second breaker, load screw of pole 1
}
point-S2 = second breaker, load screw of pole 2
point-X1 = { $feed ->
    [neutral] box in the line, line screw of the hot
   *[legs] box in the line, line screw of leg 1
}
point-X2 = box in the line, line screw of leg 2
point-X3 = { $feed ->
    [neutral] box in the line, load screw of the hot
   *[legs] box in the line, load screw of leg 1
}
point-X4 = box in the line, load screw of leg 2
point-JA = { $feed ->
    [neutral] junction box, splice of the hot
   *[legs] junction box, splice of leg 1
}
point-JB = { $feed ->
    [neutral] junction box, splice of the neutral
   *[legs] junction box, splice of leg 2
}
point-JC = junction box, off-peak splice of leg 1
point-JD = junction box, off-peak splice of leg 2
point-JG = junction box, ground screw
point-H1 = { $feed ->
    [neutral] limit, line screw of the hot
   *[legs] limit, line screw of leg 1
}
point-H2 = { $feed ->
    [neutral] limit, load screw of the hot
   *[legs] limit, load screw of leg 1
}
point-H3 = { $feed ->
    [neutral] limit, line screw of the neutral
   *[legs] limit, line screw of leg 2
}
point-H4 = { $feed ->
    [neutral] limit, load screw of the neutral
   *[legs] limit, load screw of leg 2
}
point-H5 = lower limit, line screw of leg 1
point-H6 = lower limit, load screw of leg 1
point-H7 = lower limit, line screw of leg 2
point-H8 = lower limit, load screw of leg 2
point-U1 = upper thermostat, common
point-U2 = upper thermostat, to the upper element
point-U3 = upper thermostat, line of the interlock
point-U4 = upper thermostat, to the lower thermostat
point-D1 = lower thermostat, line
point-D2 = lower thermostat, to the lower element
point-UEa = upper element, switched screw
point-UEb = upper element, permanent screw
point-LEa = lower element, switched screw
point-LEb = lower element, permanent screw
point-K1 = control board, line
point-K2 = control board, return
point-K3 = control board, to the upper element
point-K4 = control board, to the lower element
point-T1 = plug of the upper sensor, pin 1
point-T2 = plug of the upper sensor, pin 2
point-T3 = plug of the lower sensor, pin 1
point-T4 = plug of the lower sensor, pin 2
point-shell = bare metal of the tank
point-pipe = bare cold water pipe
point-wire = { $wire }, { $colour }
point-landed = On { $screw }
point-lifted = Off its screw
point-loose = Hung off among others without labels: which one it is cannot be seen
point-empty = No wire on it
colour-black = black
colour-white = white
colour-red = red
colour-blue = blue
colour-green = green
diagram-title = Factory wiring diagram
diagram-list = Connections
diagram-wire = { $from }, to { $to }

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
page-mode = How
page-choose-heater = Heater
page-choose-household = Household
page-choose-climate = Town
page-choose-location = Where it stands
page-choose-day = Day of the year
page-choose-leg-volts = Volts to neutral
page-licence = Licence of the learner
page-choose-fault = Fault
page-choose-level = How hard to tell
page-choose-family = Family of faults
page-choose-like = Looks like
page-choose-second = A second fault
page-second-none = One fault alone
page-second-any = Any that goes with it
page-second-follows = What leads to it, or follows from it
page-choose-traps = Traps
page-choose-limit = Limit in simulated minutes
page-choose-limit-note = Empty for none; 5 to 1023. Time inside the simulation: it passes with each act, and stands still while the learner thinks.
page-choose-clock = Limit by the wall clock, in minutes
page-choose-clock-note = Empty for none; 1 to 1023. The learner’s own device keeps it; a file cannot prove it.
page-chance = Left to chance
page-fault-chance = Left to chance
page-fault-chance-note = Any that can be in this house and that no single look names, as often as the trade meets it.
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
page-dealing = Dealing the drill: the household lives its week …
page-stop = Stop
page-waiting = Time passes …
page-stopped = Stopped.
page-go-on = Go on
debrief-folding = Working your acts through again …
debrief-folding-would = Working it through with each other fault …
debrief-not-ended = The job has not ended yet. Hand it over, or stop and call, to read the debrief.
debrief-nothing = There is no finished drill on this device.
debrief-no-acts = Nothing was done.
debrief-again = Work it again
debrief-from-here = Work it again from here
debrief-from-here-about = The acts up to this one stand; what comes after is done anew, as practice. The record says so.
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
debrief-fault-at = { $fault } – { $stage }
debrief-second-fault = And besides
debrief-remedy = What puts it right
debrief-finding = What you wrote
debrief-no-finding = No finding was written.
debrief-ending = How it ended
debrief-customer = What the customer gets
debrief-traces = Also there, harmless
trace-streak = The dry streak of rust on the jacket: from a leak mended long ago. A wet one would be another matter.
trace-soot = The old soot behind the cover: from a joint made again long ago. Char at a wire would be another matter.
trace-lime = The dry crust of lime on the discharge pipe: left by water of years ago. What drips now would be another matter.
trace-condensate = The thin line that drips beside the heater: water out of the air, from the air handler. None of it comes from the heater.
debrief-learner = Learner
debrief-code = Drill
debrief-report = Service report
debrief-call = Service call
debrief-call-at = { $call }, { $street }, { $town }; all invented
debrief-hours = Time on the job
debrief-hours-from = { $from } to { $until }
debrief-plate = { $size }, { $supply }, { $elements }
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
debrief-current = current in the heater’s leads
debrief-tap = tap
debrief-leg = { $feed ->
    [neutral] hot
   *[legs] leg { $leg }
}
debrief-neutral = neutral
debrief-temperatures = temperatures: top, controls, tap
debrief-heat = heat of the elements
debrief-strip = The job, moment by moment
debrief-arrival = On arrival, before the first act.
debrief-figures = Figures at { $clock }
debrief-table = The marked acts as a table
debrief-act = After the act
debrief-at-top = Water at the top
debrief-at-tap = Water at the tap
debrief-control-upper = Upper control
debrief-control-lower = Lower control
debrief-element-upper = Upper element
debrief-element-lower = Lower element
debrief-element-upper-1 = Upper
debrief-element-upper-2 = element
debrief-element-lower-1 = Lower
debrief-element-lower-2 = element
debrief-element-only = Element
debrief-only-element = element
debrief-only-control = control
debrief-fill = Tank filled
debrief-pressure = Pressure
debrief-section = Inside the heater at { $clock }
debrief-off = off
debrief-air = air
debrief-ladder = The circuit at { $clock }
debrief-ladder-dead = dead
debrief-ladder-live = live to ground
debrief-ladder-runs = carries current
debrief-ladder-heats = { $element }: { $amps } flow in it.
debrief-ladder-waits = { $element }: live, but no current flows in it.
debrief-ladder-off = { $element }: dead at both screws.
debrief-ladder-shell = { $element }: { $amps } leak to its sheath.
debrief-ladder-lifted = Lifted: { $end }.
debrief-ladder-astray = Not where it belongs: { $end }, now on { $screw }.
debrief-ladder-breaker = Breaker { $slot }
debrief-ladder-box = Box
debrief-ladder-relay = Relay
debrief-ladder-limit = Limit
debrief-ladder-board = Board
debrief-ladder-closed = closed
debrief-ladder-open = open
debrief-ladder-whole = coil whole
debrief-ladder-broken = coil broken
debrief-ladder-powered = powered
debrief-ladder-live-short = live, 0 A
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
instructor-practice = { $carried ->
    [0] practice: { $back } taken back
   *[other] practice: { $carried } acts carried over, { $back } taken back
}
instructor-open = Step through
instructor-back = Back to the table
instructor-review = Attempt of { $learner }
instructor-no-name = (no name)
instructor-unsafe = Commonest in the account of safety, and what would have been right
instructor-of-all = { $count } of { $total }
instructor-table = Attempts with their accounts

## Sources

atlas-link = Fault atlas
atlas-tag = Fault atlas
atlas-title = Fault atlas
atlas-lead = Each fault of the simulation beside the same house sound: what one sees, hears and reads, and what looks most like it. Every line is walked in the simulated house as you open it.
atlas-caution = A practice aid: on a live heater the maker’s instructions, local code and the limits of a licence come first.
atlas-pairs = Which two faults can be told apart
atlas-pairs-about = Each two faults were put into thirty houses of every heater that can have both, and everything there is to look at and to read was walked. A full square: told apart in every house. A diamond: in all but one of thirty, or else one part is to change. A triangle: one repair serves both. A cross: missed. No mark: no house of the run had both.
atlas-pairs-alt = A mark for each pair of faults; what tells two apart is on the page of each fault.
atlas-shut = The atlas is shut while an exam is under way.
atlas-search = Look for a fault
atlas-found = { $count ->
    [one] One fault
   *[other] { $count } faults
  }
atlas-all = All faults
atlas-in-error = Commonly changed for it in error: the { $part }.
atlas-beside = Sound and faulty, side by side
atlas-house = One drawing of a house: { $heater }. Another house reads otherwise.
atlas-walking = Walking the house, sound and with this fault …
atlas-act = What is done
atlas-before = Before it
atlas-sound = Sound
atlas-faulty = With this fault
atlas-as-found = As found
atlas-cut = { $house }: the heater cut open, { $top } at the top, { $bottom } at the bottom, { $heat } of heat
atlas-cut-after = Inside the heater, in both houses after the same act: { $act }.
atlas-no-difference = Nothing on the heater differs from a sound house: only the people’s habits do.
atlas-alike = What looks most like it
atlas-alike-about = The same house is walked with every other fault that fits it. That takes a while on a slow computer and can be stopped.
atlas-find = Walk the other faults
atlas-stop = Stop
atlas-progress = { $done } of { $total } faults walked
atlas-twin = Looks like
atlas-by = Told apart by
atlas-here = Here
atlas-there = There
atlas-course = As it gets worse
atlas-stage-early = Early
atlas-stage-well-on = Well on
atlas-stage-gone = Far gone
atlas-one-repair = Nothing: one repair serves both
sources-link = Sources
sources-tag = Sources
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
sources-group-bench-reduce = What hands, eyes and ears tell, and what an act takes
sources-group-bench-view = What is seen on the drawing
sources-group-bench-prices = What parts cost
sources-group-solver-hydraulic = Pressure, valves, vessels
sources-group-solver-tank = Layers of water: conduction and mixing
sources-group-solver-skin = Skin and the burn it takes
sources-group-solver-water = Water itself
sources-group-plant-branch = Branch circuits: breakers and conductors
sources-group-plant-conductor = Conductors: gauge, metal, warmth
sources-group-plant-installation = How a heater is put in
sources-group-plant-in_line = Boxes in the line: switches, timers, relays
sources-group-plant-location = Where heaters stand
sources-group-plant-layout = Ways a heater is wired
sources-group-plant-wire = Cables and joints
sources-group-plant-build = A sound house
sources-group-plant-climate = Places and their water mains
sources-group-plant-controls = Thermostats, limit, breakers, elements, joints
sources-group-plant-electrical = Wiring and its resistances
sources-group-plant-fault = Faults: how often, how bad
sources-group-plant-handiwork = Wrong work that others left
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
harm-strain = A back strained under { $mass }.

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
caution-strain = Two people to a heater, or a dolly and straps; nobody lifts on with a hurt back.

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
rule-burn-why = { $burning-heat } burns through skin in about five seconds, { $safe-heat } takes minutes.
rule-burn-right = Take the temperature before any hand, run hot water with people kept clear, and cool the tank before it drains.
rule-blast = The tank blew steam or burst.
rule-blast-why = Water above boiling under pressure is a bomb. Nobody belongs near it.
rule-blast-right = Power off only if the panel is reached without passing the tank, everybody out, call.
rule-energised-miswired = Power came on with a wire on a foreign screw: { $detail }.
rule-energised-miswired-why = A crossed wire can put voltage on the shell, bypass the limit or run both elements.
rule-energised-miswired-right = Label each wire before lifting it, land it by the diagram, check it before power.
rule-worked-live = Worked on a live part with gloves and eye protection on: { $detail }.
rule-worked-live-why = Gloves make a slip survivable, not the work allowed. Dead work is the rule.
rule-worked-live-right = Find the source, lock it off, prove dead.
rule-worked-unproved = Worked before it was proved dead: { $detail }.
rule-worked-unproved-why = It happened to be dead. A mislabelled breaker, a second source or a broken lead would have made it live.
rule-worked-unproved-right = { $feed ->
    [neutral] Lock and tag, meter proved, hot to neutral, every screw to a proved ground, meter proved again.
   *[legs] Lock and tag, meter proved, leg to leg, every screw to a proved ground in both compartments, meter proved again.
}
rule-ohms-live = An ohms or insulation test met a live circuit.
rule-ohms-live-why = The reading means nothing, and the meter can fail in the hand.
rule-ohms-live-right = Volts first. Ohms only once proved dead, wires lifted.
rule-ohms-unproved = Ohms were measured before the circuit was proved dead: { $detail }.
rule-ohms-unproved-why = Had it been live, the reading would have lied and the meter might have failed.
rule-ohms-unproved-right = Prove dead first, then ohms.
rule-lacked-at = { $point }; { $missing }
rule-lacked-lock = a source had no lock and tag of one's own
rule-lacked-household = the household had not been told
rule-lacked-meter = the meter had not been proved on a known source
rule-lacked-legs = { $feed ->
    [neutral] hot to neutral had not been read
   *[legs] leg to leg had not been read
}
rule-lacked-ground = the ground it was read against had not been proved
rule-lacked-screw = not every screw had been read to a proved ground
rule-lacked-meter-again = the meter had not been proved again
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
rule-lifted-alone = A heater was carried by one alone.
rule-lifted-alone-why = It weighs twice what one person should lift, and water left in it shifts.
rule-lifted-alone-right = Ask for a second pair of hands before the pipes come off.
rule-hot-discharge = Water at { $detail } ran with nothing to keep people clear.
rule-hot-discharge-why = Skin burns in it within two minutes, and in water a little hotter within seconds.
rule-hot-discharge-right = Tell the household, hose to a safe place, thermometer first.
rule-left-hot = Left set to { $detail }.
rule-left-hot-why = A child or an old person cannot pull away in time.
rule-left-hot-right = Everything set to { $safe-heat }; anything hotter needs a mixing valve.

rule-no-finding = No finding was written.
rule-no-finding-why = A repair without a finding is a guess, even when it works.
rule-no-finding-right = Write the one thing wrong and the readings that show it, before the repair.
rule-wrong-finding = The finding was: { $detail }.
rule-wrong-finding-why = It leads to changing something that is sound.
rule-wrong-finding-right = Look for the reading that only one fault can give.
rule-second-not-found = Two things were wrong; not found: { $detail }.
rule-second-not-found-why = A heater that is proved after the first repair shows that something is still amiss; left alone, it brings the call back.
rule-second-not-found-right = Prove the repair. What still reads wrong is a finding of its own: readings, finding, repair.
rule-wrong-cause = The right part for another cause: { $detail }.
rule-wrong-cause-why = The part gets changed, but what to prove afterwards depends on how it failed.
rule-wrong-cause-right = Read the contact both ways, hot and cold.
rule-no-evidence = The finding names no evidence.
rule-no-evidence-why = Nobody can check it, not even you next week.
rule-no-evidence-right = Name the readings that show it.
rule-evidence-leaves-others = The evidence would look the same with: { $detail }.
rule-evidence-leaves-others-why = What was marked does not tell them apart; one more reading, taken and marked, would.
rule-evidence-leaves-others-right = Before you write it down, ask what else would read like this, and take and mark the reading that differs.
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
rule-wrong-rating-why = A wrong voltage or wattage heats slowly, trips, or burns out early; a short element runs hotter under scale.
rule-wrong-rating-right = Read the plate and the stamp; match volts, watts, length, mount and size.
rule-put-in-amiss = Put in as it must not be: { $detail }.
rule-put-in-amiss-why = An old relief valve may not open again; copper on bare steel eats the nipple; a thermostat off the shell opens late, and the water scalds.
rule-put-in-amiss-right = A new relief valve with a full-size pipe, dielectric nipples between steel and copper, a thermostat pressed flat.
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
rule-not-measured = No wire was clamped after power came back.
rule-not-measured-why = Only current proves that an element heats.
rule-not-measured-right = Cover on, clamp one wire: watts by volts, and nothing once satisfied.
rule-not-run-to-cut-out = The heater was not watched on after power came back.
rule-not-run-to-cut-out-why = A welded contact or a grounded coil shows only when the water is hot.
rule-not-run-to-cut-out-right = Run it to its cut-out, and see the current gone: 0 A.
rule-leak-not-looked-for = After refilling, nobody looked for a leak.
rule-leak-not-looked-for-why = A gasket that weeps cold is a flood by morning.
rule-leak-not-looked-for-right = Dry the fittings, look again cold and once more hot.
rule-cost-not-agreed = Fitted without the customer’s consent to the cost: { $detail }.
rule-cost-not-agreed-why = These people wanted to be asked before so much is spent.
rule-cost-not-agreed-right = Ask what it may cost, name the sum, and get consent before a part is opened.
rule-hazard-unreported = Seen and not told: { $detail }.
rule-hazard-unreported-why = It is not the fault, and it can hurt somebody later; the customer does not know what to look for.
rule-hazard-unreported-right = Report what is wrong beside the fault, and leave it to whoever may mend it.
rule-reported-amiss = Reported, and not so: { $detail }.
rule-reported-amiss-why = A customer who is told of hazards that are not there pays for them.
rule-reported-amiss-right = Report what was seen or measured.
rule-told-amiss = The customer was answered wrongly: { $detail }
rule-told-amiss-why = People act on what the technician says.
rule-told-amiss-right = Say what is so; what you do not know, leave open.
rule-dials-left = It was left set above { $safe-heat }, or upper and lower unequal.
rule-dials-left-why = Unequal settings give odd output, high ones scald.
rule-dials-left-right = Everything set to { $safe-heat }.
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
rule-left-open-right = Main and cold valve open, taps and drain shut, hose and gauge off, lever down.
rule-wires-unlabelled = Lifted without a label: { $detail }.
rule-wires-unlabelled-why = Hung off together, nobody can tell such wires apart an hour later. On each other’s screws they can leave an element cold, heat it past its thermostat, or short the supply and trip the breaker.
rule-wires-unlabelled-right = Label or photograph each end before it comes off.
rule-customer-not-told = The customer was not told the result.
rule-customer-not-told-why = They run the tap next, and it will be hot.
rule-customer-not-told-right = What was found, what was done, what to watch, and that the water gets hot.
rule-left-unsafe = Stopped and called, but it was left live, open or leaking.
rule-left-unsafe-why = The next person, or a child, meets it as it is.
rule-left-unsafe-right = Power locked off, covers on, water shut where it leaks, then call.
rule-no-ambulance = Somebody was hurt, and no ambulance was called before anything else was done.
rule-no-ambulance-why = A shock can put a heart out of step hours later, and a deep burn may hurt less than it is.
rule-no-ambulance-right = Power off before anybody is touched, water shut, then the ambulance. The heater waits.

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
belief-legs-swapped = { $feed ->
    [neutral] Hot and neutral can be swapped.
   *[legs] Swapping the legs saves power.
}
belief-legs-swapped-truth = { $feed ->
    [neutral] It heats all the same, but the thermostat then opens the neutral: element and wires stay live to the shell.
   *[legs] Nothing changes: the two legs are alike. What changes is that a wire now sits on a screw not its own.
}
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
belief-breaker-off-is-safe-truth = { $feed ->
    [neutral] Off by its label. Only a reading on the metal, hot to neutral and each to ground, says which one it was.
   *[legs] Off by its label. Only a reading on the metal, leg to leg and each leg to ground, says which one it was.
}
belief-dial-down-is-off = With the dial down it is off.
belief-dial-down-is-off-truth = { $feed ->
    [neutral] A control is no isolation: up to the thermostat the hot stays live to the shell.
   *[legs] A thermostat opens one leg. The other stays on every element at 120 V to the shell.
}
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
belief-sediment-bill = Sediment makes an electric heater use more.
belief-sediment-bill-truth = No measurement of an electric storage heater has shown it: the heat stays in the tank. Sediment takes room, and it overheats the lower element.
belief-bond-of-its-own = The tank needs a bonding wire of its own.
belief-bond-of-its-own-truth = The ground wire of its circuit bonds it: 10 AWG on a 30 A circuit. What matters is that it is whole; local code has the last word.
belief-warm-is-clean = { $safe-heat } kills Legionella.
belief-warm-is-clean-truth = It does not: there they no longer grow, and die only slowly. Hotter storage needs a mixing valve, and is for those who answer for the building to decide.
belief-seven-tenths = Seven tenths of the tank is its first-hour rating.
belief-seven-tenths-truth = That is about what one draw gives before it cools. The rating is measured over an hour, with what is heated meanwhile; read it off the label.
belief-recovery-sum = Gallons times 8.33 times degrees over watts gives gallons an hour.
belief-recovery-sum-truth = That has gallons on both sides and no hour. Watts times 3.412, over 8.33 times degrees, gives gallons an hour.
belief-both-trip-at-once = Both elements at once would trip the breaker on the spot.
belief-both-trip-at-once-truth = 37.5 A on a 30 A breaker is 125 %: it may hold for minutes or hours, or for ever, and the wire heats first. The clamp says what flows.
belief-relief-opens-at-170 = The relief valve should have opened at { $limit-heat }.
belief-relief-opens-at-170-truth = { $limit-heat } is the limit’s. The relief valve opens at { $relief-heat } or at its pressure; a valve that stays shut below that is sound.
belief-nothing-boils-below-212 = The water is not boiling hot, so nothing can boil in there.
belief-nothing-boils-below-212-truth = Under scale the sheath is far hotter than the water, and boils it at its skin. That is the popping: flush it.
belief-white-is-neutral = White is neutral, it cannot hurt.
belief-white-is-neutral-truth = { $feed ->
    [neutral] A neutral that is open on its way back stands at full voltage through the element. Measure it to a ground that is proved.
   *[legs] On a 240 V heater the white wire is the second leg: 120 V to the tank. It ought to be marked; measure it.
}
belief-full-in-an-hour = An hour after it ran empty it is full of hot water.
belief-full-in-an-hour-truth = A whole tank keeps one element busy for well over an hour. Current and volts say whether it works.
belief-any-megohms-are-bad = Any reading from element to tank is a bad element.
belief-any-megohms-are-bad-truth = A megohm and more is sound: a little moisture in the insulation reads so. Below a megohm dry it and test again.
belief-nothing-to-the-tank-is-dead = It hardly reads anything to the tank, so it is dead.
belief-nothing-to-the-tank-is-dead-truth = { $feed ->
    [neutral] Only if the tank is a ground. With its ground wire off it can stand at the same volts as the screw: measure to a ground that is proved, and hot to neutral.
   *[legs] Only if the tank is a ground. With its ground wire off it can stand at the same volts as the screw: measure to a ground that is proved, and leg to leg.
}

## Why a code or a file cannot be used

wrong-order-unreadable = line { $line }, column { $column }: { $problem }. Compare with docs/drill-file.md
wrong-order-rules = this drill was made for rules { $found }; this release has rules { $rules }. Open it with the release that made it
wrong-order-range = { $name } must lie between { $low } and { $high }, not { $value }
wrong-order-empty = the list of faults is empty: name one, or leave `fault` out for any
wrong-order-nothing-fits = none of the faults asked for can be in this house: choose another heater or other faults
wrong-order-no-second = no second fault of the kind asked for can be there beside the first: choose another, another heater or licence
wrong-fault-unknown = { $id } has no parameter "{ $name }"; it has { $known }
wrong-fault-range = { $id }: { $name } must lie between { $low } and { $high } { $unit }, not { $value }
wrong-fault-house = { $id } cannot be in this house: see its file for the equipment it needs
wrong-code-character = '{ $found }' is not used in drill codes: read the code again, character { $place }
wrong-code-check = this code has a slip in it: compare it with the sheet, character by character
wrong-code-length = this is not a whole drill code: it has { $found } characters
wrong-code-rules = this code was made for rules { $found }; this release has rules { $rules }. Use the release that made it
wrong-code-no-room = a code has no room for { $what }: hand the drill out as a file or a link
wrong-attempt-large = the file has { $found } bytes; an attempt has at most { $most }. Is it the right file?
wrong-attempt-unreadable = line { $line }, column { $column }: { $problem }. If the file ends early, fetch it again from the learner
wrong-attempt-drill = line { $line }, the drill: { $error }
wrong-attempt-code = line { $line }, the drill's code: { $error }
wrong-attempt-act = line { $line }, act { $act }: { $problem }. Compare with docs/attempt-file.md
wrong-attempt-rules = this attempt was made under rules { $found }; this release has rules { $rules }. Open it with the release that made it
wrong-attempt-many = { $found } acts; an attempt has at most { $most }
wrong-attempt-edited = act { $act } (line { $line }) was changed after the file was made: its digest does not fit
wrong-attempt-edited-head = the learner, the drill or the mark of practice was changed after the file was made: its digest does not fit
wrong-attempt-cut = { $acts } acts but { $links } digests: the file was cut or added to after act { $place }
wrong-opening-unreadable = line { $line }: { $problem }. Is it the instructor's opening file?
wrong-opening-rules = this opening file was made for rules { $found }; this release has rules { $rules }

## Traces and tables

trace-learner = Learner
trace-sealed = sealed
trace-unsealed = unsealed
trace-no-code = no code
trace-truth = What was wrong

## The guide of the first two calls

guide-title = Beside you
guide-show = Show me where
guide-reason = Why?
guide-away = Put the guide away
guide-back = Bring the guide back
guide-stage-done = done
guide-stage-now = now
guide-stage-left = still to do
guide-stage-heard = Heard
guide-stage-off = Power off
guide-stage-locked = Locked
guide-stage-dead = Proved dead
guide-stage-read = Read
guide-stage-named = Named
guide-stage-changed = Changed
guide-stage-refilled = Refilled
guide-stage-on = Energized
guide-stage-proved = Proved
guide-stage-over = Handed over
guide-ask = Ask the customer when the water was last hot.
guide-why-ask = What they tell narrows the search before a tool is out.
guide-plate = Read the rating plate.
guide-why-plate = Its volts and watts say what a sound element measures, and which part fits.
guide-tell = Tell the household that power and water will be off.
guide-why-tell = Somebody who does not know may switch it on again while your hands are inside.
guide-directory = At the load center, read the directory.
guide-why-directory = It says which breaker feeds the heater. It may be wrong, so the try comes later.
guide-off = Switch breaker { $slot } off.
guide-why-off = Power off comes first: no cover is opened before it.
guide-try = Try to start it: turn the dial up and listen.
guide-why-try = Nothing may start. If something does, the wrong breaker is off.
guide-lock = Put your own lock and tag on breaker { $slot }.
guide-why-lock = A breaker that is only off can be switched on by anybody. Your key stays with you.
guide-protect = Put on gloves and eye protection from the kit.
guide-why-protect = Locked is not yet dead. Until it is proved, every screw counts as live.
guide-open = At { $place }, take everything off, down to the screws.
guide-why-open = Behind it are the screws that have to be read before a hand goes in.
guide-meter = Prove the meter on a receptacle you know is live.
guide-why-meter = A meter with a broken lead shows 0 V everywhere. First see that it can show a voltage.
guide-zero = Hold the leads together and zero them.
guide-why-zero = The leads have ohms of their own, and they would be added to the reading.
guide-ground = Read { $dial }: red on { $red }, black on { $black }.
guide-why-ground = Next to nothing here proves the ground. Against a ground that is open, 0 V would prove nothing.
guide-legs = Read { $dial }: red on { $red }, black on { $black }.
guide-why-legs = Leg to leg first. But 0 V here alone is also what one lost leg looks like, so more follows.
guide-to-ground = Read { $dial }: red on { $red }, black on { $black }.
guide-why-to-ground = Each leg, and each screw your hand will touch, to the ground that you proved.
guide-again = Prove the meter again on the receptacle.
guide-why-again = Had it failed meanwhile, every 0 V just read would be worth nothing. After this it is proved dead.
guide-label = Pick the screw, and label the { $wire }.
guide-why-label = What comes off has to go back on its own screw.
guide-lift = Lift the { $wire }.
guide-why-lift = With its wires on, other paths answer for the element.
guide-ohms = Read { $dial }: red on { $red }, black on { $black }.
guide-why-ohms = From end to end. The plate asks for volts times volts over watts; over range is an open element.
guide-shell = Read { $dial }: red on { $red }, black on { $black }.
guide-why-shell = A coil can also touch its sheath. Over range here means that it does not.
guide-pole = Read { $dial }: red on { $red }, black on { $black }.
guide-why-pole = A contact that makes reads next to nothing. Over range is one that no longer makes.
guide-lower = Read the lower element from here: { $dial }, red on { $red }, black on { $black }.
guide-why-lower = Its thermostat is closed while it is cold, so its ohms show here too. Two open elements look alike from the tap.
guide-unclear = What you have read does not say what is wrong. Look further before anything is named.
guide-why-unclear = No part is changed on a guess: ask for a hint, or read what you have not read.
guide-name = Tick your readings in the log, choose “{ $fault }”, and write it down.
guide-why-name = Evidence first, then the name, then the repair: never the other way around.
guide-cost = Name the price of the work and have the customer agree.
guide-why-cost = It is their money, and now you know what it is for.
guide-cold-off = At the heater’s top, shut the cold valve.
guide-why-cold-off = Otherwise the tank fills again while it drains.
guide-air = Open the hot kitchen tap.
guide-why-air = It takes the pressure off and lets air in: without air the tank does not drain.
guide-hose = Put the hose on the drain.
guide-why-hose = The water has to go where it hurts nobody and spoils nothing.
guide-drain = Open the drain.
guide-why-drain = Only so far down as the element: power stays locked, for a bare element burns out within a minute.
guide-drain-wait = Let ten minutes pass while it drains.
guide-why-drain-wait = The water has to stand below the flange before the element is unscrewed.
guide-change = From the van, fit an element with the volts, watts, length and mount of the plate, its seat cleaned.
guide-why-change = This part and no other: it is what you read and named. Is the water still too high, you will be told.
guide-change-limit = From the van, fit a new limit.
guide-why-change-limit = This part and no other: it is what you read and named. The tank stays full.
guide-new-ohms = Read the new one too: { $dial }, red on { $red }, black on { $black }.
guide-why-new-ohms = A new part can be the wrong one, or faulty.
guide-land = Land the { $wire } on { $screw } again, with the torque driver.
guide-why-land = Each wire on its own screw. A loose joint burns.
guide-loose = Find out with the ohmmeter where each loose wire goes, and land it there with the torque driver.
guide-why-loose = They hung off without labels, and nothing in sight says which is which. A wire on the wrong screw can leave an element live, or trip the breaker.
guide-drain-shut = Shut the drain.
guide-why-drain-shut = Water before power: now the tank is filled, and the lock stays on meanwhile.
guide-hose-off = Take the hose off.
guide-why-hose-off = The drain is shut, and nothing shall be left on it.
guide-air-out = Open the hot kitchen tap.
guide-why-air-out = The air has to leave the tank as the water comes in.
guide-cold-on = At the heater’s top, open the cold valve fully.
guide-why-cold-on = An element that is switched on in air burns out in under a minute.
guide-fill-wait = Let ten minutes pass while it fills.
guide-why-fill-wait = Full is only when the tap runs full and steady, without spitting, for some minutes.
guide-lever = Lift the lever of the relief valve.
guide-why-lever = Solid water from it shows that the top is full, and that the valve can open.
guide-lever-down = Let the relief valve’s lever go.
guide-why-lever-down = It has to seat again.
guide-tap-shut = Shut the tap.
guide-why-tap-shut = The air is out.
guide-leak = Look into the compartment, at the new gasket.
guide-why-leak = A drip now would run over live screws later.
guide-close = At { $place }, put everything back on.
guide-why-close = Insulation, shield and cover on before power: live screws covered, the thermostat warm.
guide-box = Take the lid off the heater’s junction box.
guide-why-box = The clamp goes around a lead there, without a hand near a screw.
guide-unlock = Take your lock off breaker { $slot }.
guide-why-unlock = Wires landed, water in, air out, covers on: only now.
guide-on = Switch breaker { $slot } on.
guide-why-on = Full tank, closed covers: now it may heat.
guide-amps = At the junction box, clamp the heater lead of leg 1.
guide-why-amps = Watts over volts is the current to expect. Volts alone do not show that an element heats.
guide-cut-out = Wait for the cut-out.
guide-why-cut-out = That it heats is half of the proof. The other half is that it stops.
guide-no-amps = Clamp the same lead once more.
guide-why-no-amps = Satisfied means no current at all. What still flows would heat on for ever, or leak to the shell.
guide-box-shut = Put the lid back on the junction box.
guide-why-box-shut = Nothing live is left open.
guide-hot = Run a bucket of hot water at the kitchen tap.
guide-why-hot = This is what the customer called for.
guide-result = Tell the customer what was found and done, and that the water is hot.
guide-why-result = After cold days, hot water surprises.
guide-hand-over = Hand over the job.
guide-why-hand-over = The debrief then goes through what you did, step by step.
page-door-first = Your first call
page-door-first-about = A family has no hot water. A quiet line tells you what comes next, and why if you ask, from the first question to the last proof. About five minutes, no manual; nothing here can hurt you.
page-first = Begin your first call
page-second = Second call: drain, change, refill

## What can I do here?

here-title = What can I do here?
here-can = You can do now
here-act = { $heading }: { $act }
here-cannot = Not now, and why
here-points = Points for your leads (the lead in hand goes there)
here-drawing = This is the whole drawing: go to a place, by its drawing or by its key, to work there.
here-always = Always at hand, wherever you are: the customer, the meter, the kit, the log. By keyboard, Tab goes from one row of buttons to the next, and the arrows go along a row or from point to point.
here-unwritten = The finding chosen in the log is not written yet.
here-key = The key { $key } opens this
here-sound = Sounds: the meter’s tone, a control’s click

## What a page offers, behind the question mark

help-here = On this page
help-anywhere = On every page
help-doors-first = It explains itself while you work it. Begin here if you have never been.
help-doors-practise = Choose how hard the fault is to tell, its family or the heater, or leave all to chance. Coached has hints and stops an act that would hurt; solo has neither.
help-doors-code = Type the code or open the file, and you work the same call as everybody who has it.
help-doors-exam = With your instructor’s code. Its debrief stays shut until the opening file is loaded.
help-doors-instructor = Compose a call, hand it out, and see what was done with it.
help-ready = Before a call
help-ready-about = A card says what the call is and what limits it has. Your name or number travels in your attempt. Where no card is shown, go to the first page and choose a call.
help-debrief-accounts = What was lost in each account, with the act that lost it. Press an act to go to its moment.
help-debrief-strip = Drag the strip at the foot, or move along it with the arrow keys: plots, heater and circuit follow. Page up and page down go from act to act.
help-debrief-inspector = What it told, what it ruled out, and what it would have shown with another fault.
help-debrief-from = The job begins anew after the act that is chosen, marked as practice. An exam is worked once.
help-debrief-steps = The whole job as a list; press an act to go there.
help-debrief-print = What a customer would be left with, with its cautions.
help-debrief-hand-in = Save the file, or copy the text, and give it to your instructor. Nothing is sent from here.
help-instructor-hand-out = Choose what the call shall be; what you leave is drawn by chance. You get a code, a link, a square for a camera, a sheet to print and a file: all open the same call.
help-instructor-exam = An exam comes with an opening file. Keep it until everybody has handed in: only with it learners read their debrief.
help-instructor-collect = Open the files or paste the texts. Every attempt is worked through again on this device, and the table shows its four accounts.
help-instructor-step = A row opens that attempt’s debrief.
help-instructor-csv = For a spreadsheet: one line for each attempt.
help-show-acts = Do what you would do on the sheet; the room sees the inside answer.
help-atlas-search = By its name or by anything in its line.
help-atlas-entry = Choose a fault: the same house is walked sound and with it, side by side; where it gets worse by stages, each is shown.
help-atlas-alike = The same house is walked with every other fault that fits, and the act that tells each apart is named.
help-sources-search = A name, a value or a document; or choose one kind of source.
help-sources-row = Each number says which document and table it is from, or that it is common practice, from memory or chosen for the simulation.
help-glossary-search = A word, or a part of one.
help-glossary-here = Where a term is underlined with dots, press it: what it means opens there.
help-look-up = Look something up
help-look-up-about = At the foot: the fault atlas, the trade’s terms, and where each number comes from.
help-speech = Language and units
help-speech-about = The language is at the top, the units are at the foot. A job under way stays as it is.
help-kept = What is kept
help-kept-about = Your job is kept on this device alone, until you clear it at its end.

## The terms of the trade

window-glossary = Terms
glossary-link = Terms
glossary-title = Terms
glossary-heading = Terms of the trade
glossary-lead = What the words on these sheets mean. A dotted line under a word opens it where it stands. On a real heater, local code and a licensed person come first.
glossary-seek = Look for
glossary-count = { $count ->
    [one] One term
   *[other] { $count } terms
 }
glossary-all = All terms
glossary-here = Terms used here

## The demonstration view

window-show = Inside view
show-title = The inside, for a room to see
show-tag = Inside view
show-link = Show the inside
show-back = Back to the sheet
show-none = There is no coached call under way to show. Begin one, or choose a fault from the atlas.
show-about = Plays a coached call with this fault for a room: whoever teaches does the acts, the inside of the heater is seen.
show-start = Begin to show it
show-acts = Acts
show-figures = Figures
show-live = Power at the heater
show-dead = No power at the heater
