"""Words that say a pressure was read on the engine after this repair."""

#: say so by themselves
AFTER_REPAIR = (
    "after|since|following the|this|my|our|that|a? repair|fix|job",
    "first start|run|fire-up|startup after|since|following the|this|my|our|that|a? repair|fix|job",
    "repaired|fixed|mended|cured|sorted it|her|that|this|now|and",
    "is|are|has|been been? repaired|fixed|mended",
    "all? repaired|fixed|mended|sorted now|:|,|;",
    "repaired|fixed|mended",
)
#: work on a part; with "now" or "after" before it, a pressure behind it is of the repaired engine
DONE = (
    "fitted|fitting|refitted|refitting|renewed|renewing|replaced|replacing|cleaned|cleaning",
    "polished|eased|adjusted|washed|brazed|welded|soldered|reground|honed|plugged|tightened|freed|sealed|resealed|rebuilt",
    "put|putting|bolted|screwed the|a|an|new|it|that|them .. in|back|on",
    "new .. in|fitted|on",
    "with|after the|a|my? new|replacement|rebuilt|renewed|another oil? pump|bearings|shells|mains|rods|spring|relief|pickup|strainer|screen|filter|sender|seal|gasket|cooler",
)
NOW = ("now|after|afterwards|with|then",)
#: says it of a state, where no work is named
IS_NOW = ("now",)
