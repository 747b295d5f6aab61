/**
 * Tree species of the United States as the national forest inventory lists them. One line a species: code; common
 * name; species group of the national equations, 10 for woodland trees; oven-dry weight over green volume, as a
 * specific gravity; moisture of green wood [% of dry weight]; carbon in dry wood [%]. Blank where the list has none.
 * Made from test/published/tree/national/species.csv by test/support/national/write.ts; change it there, never here.
 */
export const species = {
  lines: `
10;fir spp.;3;0.36;84.0;48.04
11;Pacific silver fir;3;0.4;70.0;49.31666667
12;balsam fir;3;0.33;118.54545;50.55153846
14;Santa Lucia or bristlecone fir;3;0.36;84.0;48.04
15;white fir;3;0.37;103.56757;50.97
16;Fraser fir;3;0.36;84.0;48.04
17;grand fir;3;0.35;106.05714;48.075
18;corkbark fir;3;0.36;84.0;48.04
19;subalpine fir;3;0.31;44.74194;48.215
20;California red fir;3;0.36;113.66667;51.51857143
21;Shasta red fir;3;0.36;84.0;48.04
22;noble fir;3;0.37;29.94595;50.75
40;white-cedar spp.;1;0.37;77.33;48.005
41;Port-Orford-cedar;1;0.39;74.0;47.935
42;Alaska yellow-cedar;1;0.42;71.71429;47.83
43;Atlantic white-cedar;1;0.31;86.09677;47.50333333
51;Arizona cypress;1;0.41;74.29;47.865
52;Baker or Modoc cypress;1;0.41;74.29;47.865
53;Tecate cypress;1;0.41;74.29;47.865
54;Monterey cypress;1;0.41;74.29;47.865
55;Sargent's cypress;1;0.41;74.29;47.865
56;MacNab's cypress;1;0.41;74.29;47.865
57;redcedar/juniper spp.;1;0.45;36.25;47.725
58;Pinchot juniper;10;0.45;36.25;47.725
59;redberry juniper;10;0.45;36.25;47.725
60;Drooping juniper;10;0.45;36.25;48.10625
61;Ashe juniper;10;0.45;36.25;47.725
62;California juniper;10;0.45;36.25;47.725
63;alligator juniper;10;0.48;33.54167;47.62
64;western juniper;1;0.45;36.25;47.975
65;Utah juniper;10;0.68;35.0;46.92
66;Rocky Mountain juniper;10;0.45;36.25;47.725
67;southern redcedar;1;0.42;41.16667;52.14
68;eastern redcedar;1;0.44;34.75;52.14
69;oneseed juniper;10;0.45;36.25;47.725
70;larch spp.;1;0.49;57.0;47.585
71;tamarack;1;0.49;53.71429;47.585
72;subalpine larch;1;0.49;57.0;47.585
73;western larch;1;0.48;60.25;47.6
74;Japanese larch;1;0.49;57.0;48.13916929
75;Siberian larch;1;0.49;57.0;47.585
81;incense-cedar;1;0.35;106.05714;53.75857143
90;spruce spp.;5;0.36;59.2;48.04
91;Norway spruce;5;0.36;59.2;47.83071154
92;Brewer spruce;5;0.36;59.2;48.04
93;Engelmann spruce;5;0.33;89.39394;48.145
94;white spruce;5;0.37;51.59459;51.16333333
95;black spruce;5;0.38;47.60526;47.97
96;blue spruce;5;0.36;59.2;48.04
97;red spruce;5;0.37;47.27027;48.005
98;Sitka spruce;5;0.33;60.24242;49.95
100;pine spp.;4;0.43;76.13;47.795
101;whitebark pine;4;0.43;76.13;47.795
102;Rocky Mountain bristlecone pine;4;0.43;76.13;47.795
103;knobcone pine;4;0.39;105.46154;47.935
104;foxtail pine;4;0.43;76.13;47.795
105;jack pine;4;0.4;100.325;47.9
106;common or two-needle pinyon;10;0.5;28.2;47.55
107;sand pine;4;0.46;32.3913;47.69
108;lodgepole pine;4;0.38;64.47368;50.32
109;Coulter pine;4;0.43;76.13;47.795
110;shortleaf pine;4;0.47;77.29787;47.655
111;slash pine;4;0.54;72.12963;51.337
112;Apache pine;4;0.43;76.13;50.2
113;limber pine;4;0.37;94.91892;48.005
114;southwestern white pine;4;0.43;76.13;47
115;spruce pine;4;0.41;75.90244;47.865
116;Jeffrey pine;4;0.37;103.56757;51.85142857
117;sugar pine;4;0.34;130.0;48.11
118;Chihuahuan pine;4;0.43;76.13;49.4
119;western white pine;4;0.36;55.80556;48.04
120;bishop pine;4;0.45;60.26667;47.725
121;longleaf pine;4;0.54;63.22222;47.41
122;ponderosa pine;4;0.38;89.78947;51.33333333
123;Table Mountain pine;4;0.49;76.61224;47.585
124;Monterey pine;4;0.4;100.02496;47.9
125;red pine;4;0.41;64.17073;53.28
126;pitch pine;4;0.47;70.48936;47.655
127;gray or California foothill pine;4;0.4;80.3;47.9
128;pond pine;4;0.51;60.2549;47.515
129;eastern white pine;4;0.34;64.97059;50.70666667
130;Scotch pine;4;0.43;76.13;47.11355062
131;loblolly pine;4;0.47;80.7234;47.655
132;Virginia pine;4;0.45;78.06667;47.725
133;singleleaf pinyon;10;0.43;76.13;47.795
134;border pinyon;10;0.43;76.13;47.795
135;Arizona pine;4;0.43;76.13;47.795
136;Austrian pine;4;0.43;76.13;52.8125
137;Washoe pine;4;0.43;76.13;47.795
138;four-leaf or Parry pinyon pine;10;0.43;76.13;47.25
139;Torrey pine;4;0.43;76.13;47.795
140;Mexican pinyon pine;10;0.43;76.13;48.45
141;papershell pinyon pine;10;0.43;76.13;47.795
142;Great Basin bristlecone pine;4;0.43;76.13;47.795
143;Arizona pinyon pine;10;0.43;76.13;47.795
144;Honduras pine;4;0.43;76.13;51.337
200;Douglas-fir spp.;2;0.45;35.0;47.725
201;bigcone Douglas-fir;2;0.45;35.0;47.725
202;Douglas-fir;2;0.45;35.33333;51.55958333
211;redwood;1;0.36;122.58333;53.084
212;giant sequoia;1;0.34;178.08824;53.82375
220;baldcypress spp.;1;0.42;95.0;47.83
221;baldcypress;1;0.42;94.59524;47.83
222;pondcypress;1;0.42;95.0;47.83
230;yew spp.;3;0.6;47.0;47.2
231;Pacific yew;3;0.6;46.9;47.2
232;Florida yew;3;0.6;47.0;47.2
241;northern white-cedar;1;0.29;98.93103;50.07428571
242;western redcedar;1;0.31;39.58065;50.38
250;torreya (nutmeg) spp.;3;0.41;74.29;47.865
251;California torreya (nutmeg);3;0.41;74.29;47.865
252;Florida torreya (nutmeg);3;0.41;74.29;47.865
260;hemlock spp.;3;0.41;78.33;47.865
261;eastern hemlock;3;0.38;110.86842;47.97
262;Carolina hemlock;3;0.41;78.33;47.865
263;western hemlock;3;0.42;56.45238;50.7
264;mountain hemlock;3;0.42;67.88095;47.83
304;catclaw acacia;10;0.52;75.13;45.4
310;maple spp.;7;0.47;70.29;47.655
311;Florida maple;7;0.47;70.29;47.655
312;bigleaf maple;7;0.44;71.18182;49.64
313;boxelder;7;0.42;90.78571;48.67
314;black maple;9;0.52;69.5;47.48
315;striped maple;7;0.44;71.18182;47.82
316;red maple;7;0.49;63.53061;48.57333333
317;silver maple;7;0.44;67.54545;47.76
318;sugar maple;9;0.56;57.39286;48.54638634
319;mountain maple;7;0.47;70.29;47.655
320;Norway maple;7;0.47;70.29;47.655
321;Rocky Mountain maple;10;0.47;70.29;47.655
322;bigtooth maple;10;0.47;70.29;47.655
323;chalk maple;8;0.47;70.29;47.655
330;buckeye, horsechestnut spp.;8;0.33;143.0;48.145
331;Ohio buckeye;8;0.33;143.0;48.145
332;yellow buckeye;8;0.33;142.81818;48.145
333;California buckeye;8;0.33;143.0;48.145
334;Texas buckeye;8;0.33;143.0;48.145
336;red buckeye;8;0.33;143.0;48.145
337;painted buckeye;8;0.33;143.0;48.145
341;ailanthus;8;0.46;74.19565;47.69
345;mimosa, silktree;8;0.52;75.13;47.48
350;alder spp.;6;0.37;99.0;48.005
351;red alder;6;0.37;99.24324;48.3
352;white alder;6;0.37;99.0;48.005
353;Arizona alder;6;0.37;99.0;48.005
355;European alder;6;0.37;99.0;48.005
356;serviceberry spp.;8;0.66;48.12121;46.99
357;common serviceberry;8;0.66;48.0;46.99
358;roundleaf serviceberry;8;0.66;48.0;46.99
360;madrone spp.;8;0.58;66.0;47.27
361;Pacific madrone;8;0.58;65.77586;47.27
362;Arizona madrone;8;0.58;66.0;47.27
363;Texas madrone;10;0.58;66.0;49.88
367;pawpaw;8;0.52;75.13;47.48
370;birch spp.;7;0.51;73.8;47.515
371;yellow birch;7;0.55;71.90909;48.77833333
372;sweet birch;7;0.6;73.0;47.2
373;river birch;7;0.49;86.42857;47.585
374;water birch;7;0.51;73.8;47.515
375;paper birch;7;0.48;73.60417;51.90875
376;resin birch;7;0.48;73.60417;47.62
377;Virginia roundleaf birch;7;0.51;73.8;47.515
378;northwestern paper birch;7;0.51;73.8;47.515
379;gray birch;7;0.45;63.82222;47.725
381;chittamwood, gum bumelia;8;0.52;75.13;47.48
391;American hornbeam, musclewood;8;0.58;46.44828;47.27
400;hickory spp.;9;0.62;68.88;47.13
401;water hickory;9;0.61;83.90164;47.165
402;bitternut hickory;9;0.6;70.93333;47.2
403;pignut hickory;9;0.66;65.10606;46.99
404;pecan;9;0.6;65.6;47.2
405;shellbark hickory;9;0.62;65.41935;47.13
406;nutmeg hickory;9;0.56;77.42857;47.34
407;shagbark hickory;9;0.64;60.25;47.06
408;black hickory;9;0.62;68.88;47.13
409;mockernut hickory;9;0.64;62.76563;47.06
410;sand hickory;9;0.62;68.88;47.13
411;scrub hickory;9;0.62;68.88;47.13
412;red hickory;9;0.62;68.88;47.13
413;southern shagbark hickory;9;0.62;68.88;47.13
420;chestnut spp.;8;0.4;120.0;47.9
421;American chestnut;8;0.4;120.35;46.37
422;Allegheny chinkapin;8;0.4;120.0;47.9
423;Ozark chinkapin;8;0.4;120.0;47.9
424;Chinese chestnut;8;0.4;120.0;47.9
431;giant chinkapin, golden chinkapin;8;0.42;132.76199;47.83
451;southern catalpa;8;0.38;73.0;46.8684875
452;northern catalpa;8;0.38;72.92105;47.97
460;hackberry spp.;8;0.49;64.0;47.585
461;sugarberry;8;0.49;64.0;44.79
462;hackberry;8;0.49;63.53061;47.585
463;netleaf hackberry;8;0.49;64.0;44.79
471;eastern redbud;8;0.52;75.13;43.8
475;curlleaf mountain-mahogany;10;0.52;75.13;47.48
481;yellowwood;8;0.52;75.13;47.48
490;dogwood spp.;8;0.61;39.5;47.165
491;flowering dogwood;8;0.64;32.71875;45.94704167
492;Pacific dogwood;8;0.58;46.44828;47.27
500;hawthorn spp.;8;0.52;75.13;47.48
501;cockspur hawthorn;8;0.52;75.13;47.48
502;downy hawthorn;8;0.52;75.13;47.48
503;Brainerd's hawthorn;8;0.52;75.13;47.48
504;pear hawthorn;8;0.52;75.13;47.48
505;fireberry hawthorn;8;0.52;75.13;47.48
506;broadleaf hawthorn;8;0.52;75.13;47.48
507;fanleaf hawthorn;8;0.52;75.13;47.48
508;oneseed hawthorn;8;0.52;75.13;47.48
509;scarlet hawthorn;8;0.52;75.13;47.48
512;river redgum;8;0.52;75.13;45.44
521;common persimmon;8;0.64;57.75;47.06
522;Texas persimmon;8;0.64;58.0;47.06
523;Anacua knockaway;10;0.52;75.13;47.48
531;American beech;9;0.56;54.53571;47.81666667
540;ash spp.;8;0.51;61.0;47.515
541;white ash;8;0.55;45.69091;47.375
542;Oregon ash;8;0.5;60.26;47.55
543;black ash;8;0.45;85.17778;48
544;green ash;8;0.53;57.22642;48.6
545;pumpkin ash;8;0.48;66.9375;47.62
546;blue ash;8;0.53;51.18868;47.445
547;velvet ash;8;0.51;61.0;47.515
548;Carolina ash;8;0.51;61.0;47.515
549;Texas ash;8;0.51;61.0;47.515
550;honeylocust spp.;8;0.6;60.0;47.2
551;waterlocust;8;0.6;60.0;47.2
552;honeylocust;8;0.6;60.25;42.3481525
555;loblolly-bay;8;0.52;75.13;47.48
561;ginkgo, maidenhair tree;8;0.52;75.13;47.48
571;Kentucky coffeetree;8;0.53;51.18868;47.445
580;silverbell spp.;8;0.42;67.88095;47.83
581;Carolina silverbell;8;0.42;68.0;47.83
582;two-wing silverbell;8;0.42;68.0;47.83
583;little silverbell;8;0.42;68.0;47.83
591;American holly;8;0.5;82.7;52.74189167
601;butternut;8;0.36;104.77778;48.53
602;black walnut;8;0.51;79.11765;46.73333438
603;northern California black walnut;8;0.44;92.0;47.76
604;southern California black walnut;8;0.44;92.0;47.76
605;Texas walnut;8;0.44;92.0;47.76
606;Arizona walnut;8;0.44;92.0;42
611;sweetgum;8;0.46;74.19565;44.47357188
621;yellow-poplar;8;0.4;95.0;45.67688333
631;tanoak;8;0.58;79.60345;47.27
641;Osage-orange;8;0.76;30.73684;46.64
651;cucumbertree;8;0.44;78.47727;47.76
652;southern magnolia;8;0.46;106.0;43.56139375
653;sweetbay;8;0.42;86.97619;47.83
654;bigleaf magnolia;8;0.43;91.75;46.51201853
655;mountain or Fraser magnolia;8;0.4;96.325;47.9
657;pyramid magnolia;8;0.43;91.75;47.795
658;umbrella magnolia;8;0.43;91.75;47.43140833
660;apple spp.;8;0.61;78.0;47.165
661;Oregon crab apple;8;0.61;78.0;47.165
662;southern crab apple;8;0.61;78.0;47.165
663;sweet crab apple;8;0.61;78.0;47.165
664;prairie crab apple;8;0.61;78.0;47.165
680;mulberry spp.;8;0.52;75.13;47.48
682;red mulberry;8;0.52;75.13;47.48
683;Texas mulberry;8;0.52;75.13;47.48
690;tupelo spp.;8;0.46;98.0;47.69
691;water tupelo;8;0.46;95.08696;47.69
692;Ogeechee tupelo;8;0.46;98.0;47.69
693;blackgum;8;0.46;101.0;45.07389447
694;swamp tupelo;8;0.46;98.0;47.69
701;eastern hophornbeam;8;0.63;52.61905;47.095
711;sourwood;8;0.5;69.88;47.55
712;paulownia, empress-tree;8;0.52;75.13;47.48
721;redbay;8;0.52;75.13;47.48
722;water-elm, planertree;8;0.52;75.13;47.48
729;sycamore spp.;8;0.46;81.0;47.69
730;California sycamore;8;0.46;81.0;47.69
731;American sycamore;8;0.46;81.15217;49.33637375
732;Arizona sycamore;8;0.46;81.0;47.69
740;cottonwood and poplar spp.;6;0.35;106.33;48.075
741;balsam poplar;6;0.31;106.77419;48.215
742;eastern cottonwood;6;0.37;116.56757;46.84189107
743;bigtooth aspen;6;0.36;91.41667;48.04
744;swamp cottonwood;6;0.35;106.33;48.075
745;plains cottonwood;6;0.35;106.33;47.84189107
746;quaking aspen;6;0.35;128.94286;47.92375
747;black cottonwood;6;0.31;137.80645;48.215
748;Fremont cottonwood;6;0.41;56.34146;47.865
749;narrowleaf cottonwood;6;0.35;106.33;48.075
752;silver poplar;6;0.35;106.33;48.075
753;Lombardy poplar;6;0.35;106.33;48.075
756;honey mesquite;10;0.78;21.0;45.9
757;velvet mesquite;10;0.78;21.0;46.57
758;screwbean mesquite;10;0.78;21.0;46.57
761;pin cherry;8;0.47;53.0;47.655
762;black cherry;8;0.47;53.44681;47.655
763;chokecherry;8;0.47;53.0;47.655
764;peach;8;0.47;53.0;47.655
765;Canada plum;8;0.47;53.0;47.655
766;American plum;8;0.47;53.0;47.655
768;bitter cherry;8;0.47;53.0;47.655
769;Allegheny plum;8;0.47;53.0;47.655
770;Chickasaw plum;8;0.47;53.0;47.655
771;sweet cherry;8;0.47;53.0;50.53467015
772;sour cherry;8;0.47;53.0;47.655
773;European plum;8;0.47;53.0;47.655
774;Mahaleb cherry;8;0.47;53.0;47.655
800;oak spp.;9;0.59;75.27;47.235
801;California live oak;9;0.59;75.27;44.4
802;white oak;9;0.6;68.26667;49.57
803;Arizona white oak;10;0.59;75.27;47.235
804;swamp white oak;9;0.64;57.75;47.06
805;canyon live oak;9;0.7;73.98571;46.85
806;scarlet oak;9;0.6;70.93333;47.2
807;blue oak;9;0.59;75.27;47.235
808;Durand oak;9;0.59;75.27;47.235
809;northern pin oak;9;0.59;75.27;47.235
810;Emory oak;10;0.59;75.27;47.235
811;Engelmann oak;9;0.59;75.27;47.235
812;southern red oak;9;0.52;97.23077;47.48
813;cherrybark oak;9;0.61;68.13115;47.165
814;Gambel oak;10;0.61;65.5082;42.258
815;Oregon white oak;9;0.64;57.75;47.06
816;scrub oak;9;0.59;75.27;47.235
817;shingle oak;9;0.59;75.27;47.235
818;California black oak;9;0.51;101.09804;47.515
819;turkey oak;9;0.59;75.27;47.235
820;laurel oak;9;0.56;83.14286;47.34
821;California white oak;9;0.55;83.56364;47.375
822;overcup oak;9;0.57;77.12281;47.305
823;bur oak;9;0.58;74.06897;47.27
824;blackjack oak;9;0.59;75.27;47.235
825;swamp chestnut oak;9;0.6;68.26667;47.2
826;chinkapin oak;9;0.59;75.27;47.235
827;water oak;9;0.56;83.14286;47.34
828;Nuttall oak;9;0.59;75.27;47.235
829;Mexican blue oak;10;0.59;75.27;47.235
830;pin oak;9;0.58;76.82759;47.27
831;willow oak;9;0.56;83.14286;47.34
832;chestnut oak;9;0.57;77.12281;47.305
833;northern red oak;9;0.56;83.14286;47.83125
834;Shumard oak;9;0.59;75.27;47.235
835;post oak;9;0.6;70.93333;47.2
836;Delta post oak;9;0.59;75.27;47.235
837;black oak;9;0.56;83.14286;47.34
838;live oak;9;0.8;52.2375;47.99
839;interior live oak;9;0.59;75.27;47.235
840;dwarf post oak;9;0.59;75.27;47.235
841;dwarf live oak;9;0.59;75.27;47.235
842;bluejack oak;9;0.59;75.27;47.235
843;silverleaf oak;10;0.59;75.27;47.235
844;Oglethorpe oak;9;0.59;75.27;47.235
845;dwarf chinkapin oak;9;0.59;75.27;47.235
846;gray oak;10;0.59;75.27;47.235
847;netleaf oak;10;0.59;75.27;46.5
851;Chisos oak;9;0.59;75.27;48.71333333
866;carrotwood;8;0.52;75.13;47.48
867;Bluewood;10;0.52;75.13;42.46571429
868;Blackbead ebony;8;0.52;75.13;44.31666667
869;Great leucaene;8;0.52;75.13;47.48
870;Texas sophora;8;0.52;75.13;47.48
876;Florida strangler fig;8;0.52;75.13;47.48
887;fishpoison tree;8;0.52;75.13;43.4
895;paradisetree;8;0.52;75.13;47.48
896;Java plum;8;0.52;75.13;47.48
901;black locust;8;0.66;40.83333;44.63
902;New Mexico locust;10;0.66;41.0;46.99
906;Everglades palm, paurotis-palm;8;0.52;75.13;47.48
907;Florida silver palm;8;0.52;75.13;47.48
911;Mexican palmetto;8;0.52;75.13;47.48
912;cabbage palmetto;8;0.52;75.13;47.48
915;other palms;8;0.52;75.13;47.48
919;western soapberry;8;0.52;75.13;47.48
920;willow spp.;6;0.36;127.0;48.04
921;peachleaf willow;6;0.36;127.0;48.04
922;black willow;6;0.36;127.02778;48.04
923;Bebb willow;6;0.36;127.0;48.04
924;Bonpland willow;6;0.36;127.0;48.04
925;coastal plain willow;6;0.36;127.0;48.04
926;balsam willow;6;0.36;127.0;48.04
927;white willow;6;0.36;127.0;48.04
928;Scouler's willow;6;0.36;127.0;48.04
929;weeping willow;6;0.36;127.0;48.04
931;sassafras;8;0.42;67.88095;45.01598887
934;mountain-ash spp.;8;0.52;75.13;47.48
935;American mountain-ash;8;0.52;75.13;47.48
936;European mountain-ash;8;0.52;75.0;47.44272624
937;northern mountain-ash;8;0.52;75.13;47.48
950;basswood spp.;8;0.32;105.0;48.18
951;American basswood;8;0.32;105.34375;48.20833333
952;white basswood;8;0.32;105.0;48.20833333
953;Carolina basswood;8;0.32;105.0;48.20833333
970;elm spp.;8;0.54;66.0;47.41
971;winged elm;8;0.6;41.56667;47.2
972;American elm;8;0.46;94.0;47.69
973;cedar elm;8;0.59;65.69492;47.235
974;Siberian elm;8;0.54;66.0;44.29136824
975;slippery elm;8;0.48;76.95833;47.62
976;September elm;8;0.54;66.0;47.41
977;rock elm;8;0.57;51.0;47.305
981;California laurel;8;0.51;66.54902;47.515
982;Joshua tree;8;0.52;75.13;47.48
990;desert ironwood;10;0.52;75.13;47.48
994;Chinese tallowtree;8;0.52;75.13;47.48
996;smoketree;8;0.52;75.13;47.48
997;Russian-olive;8;0.52;75.13;47.48
999;other or unknown live tree;8;0.52;75.13;47.48
5091;Washington hawthorn;8;0.52;75.13;47.48
5092;fleshy hawthorn;8;0.52;75.13;47.48
5093;dwarf hawthorn;8;0.52;75.13;47.48
5145;hedge maple;7;0.47;70.16;47.64882353
5146;vine maple;7;0.47;70.16;47.655
5147;Amur maple;8;0.47;70.16;47.64882353
5148;paperbark maple;8;0.47;70.16;47.64882353
5149;Painted maple;7;0.47;70.0;43.82
5150;Japanese maple;8;0.48;70.0;49.64
5151;sycamore maple;7;0.47;70.16;41.8
5152;tatarian maple;8;0.47;70.16;57.86514087
5154;Freeman maple;7;0.47;70.16;47.64882353
5155;State Street Maple;7;;;47.64882353
5156;Three Flower Maple;7;;;49.5460594
5157;sunset maple;7;0.47;70.29;47.64882353
5163;horse chestnut;8;0.33;143.0;46.8585125
5164;bottlebrush buckeye;8;;;48.145
5188;gray alder;6;0.37;99.0;47.99582417
5190;hazel alder;6;0.37;99.0;47.99582417
5192;green alder;6;;;47.99582417
5203;Allegheny serviceberry;8;0.66;48.0;46.99
5232;Japanese angelica tree;8;;;46.5
5233;devil's walkingstick;8;;;46.5
5256;smallflower pawpaw;8;;;47.48
5260;eastern baccharis;7;0.52;75.12;46.5
5279;European white birch;7;0.51;73.75;41.825
5280;Asian white birch;7;;;46.11761194
5281;downy birch;7;;;51.66531656
5322;fountain butterflybush;8;;;48.32
5328;South American jelly palm;8;0.52;75.13;47.48
5329;common box;8;;;47.48
5363;camellia;8;0.52;75.12;47.48
5375;Siberian peashrub;8;;;46.5
5378;European hornbeam;7;0.52;75.12;47.48
5401;Japanese chestnut;8;;;47.9
5402;European chestnut;8;;;47.1
5411;Chinese catalpa;8;;;47.8475
5415;snowbrush ceanothus;8;;;46.5
5423;Deodar cedar;1;0.41;74.28;47.865
5432;common buttonbush;7;0.52;75.12;46.5
5435;katsura tree;8;0.52;75.12;45.22911667
5436;California redbud;8;;;47.48
5443;hinoki false cypress;1;0.37;77.27;49.75
5444;sawara-cypress;1;0.37;77.27;48.005
5462;desert willow;8;;;45.7
5492;European ash;8;0.51;61.08;47.50692308
5529;mountain sweetpepperbush;8;;;46.5
5559;bladder senna;8;;;45.7
5591;kousa dogwood;8;0.61;39.58;53.40147083
5599;American hazelnut;8;;;47.375
5600;Turkish hazelnut;8;0.55;72.0;47.375
5603;European smoketree;8;0.52;75.13;47.48
5800;Leyland cypress;1;0.41;74.0;47.865
5818;quince;8;0.52;75.12;47.48
5965;burningbush;8;;;43.69202053
5983;European beech;9;0.52;75.12;47.1175625
6212;European larch;1;0.49;56.98;42.35
6438;catberry;8;;;47.50333333
6511;swamp bay;8;0.52;75.0;47.48
6516;Amur corktree;8;0.52;75.12;50.19278651
6538;Serbian spruce;5;0.36;59.22;48.04777778
6696;cherry laurel;8;0.48;;47.62
6707;Japanese flowering cherry;8;0.47;53.0;47.61543478
6708;Mexican plum;8;0.47;53.0;47.655
6748;roughleaf dogwood;8;0.61;40.0;47.165
6759;Stansbury cliffrose;8;;;45.7
6768;Arkansas oak;9;0.59;75.27;47.21657895
6782;Georgia oak;9;0.58;76.82759;47.21657895
6785;Havard oak;9;0.59;75.3;47.21657895
6791;myrtle oak;9;0.59;;47.21657895
6797;English oak;9;0.59;75.3;47.2
6799;bastard oak;9;0.6;75.3;47.2
6918;common buckthorn;8;0.52;75.12;47.48
6924;staghorn sumac;8;;;47.783345
6954;Elaeagnus willow;6;;;47.96
6955;crack willow;6;0.36;127.0;48.04
6967;corkscrew willow;6;;;47.2
6991;red elderberry;8;;;47.63925
7023;Argentine senna;8;;;47.40461538
7083;bigleaf snowbell;8;0.52;;47.48
7092;Japanese tree lilac;8;0.52;75.12;47.57870256
7181;Chinese parasoltree;8;0.52;75.12;47.48
7199;Chinese chastetree;8;;;47.40413167
7203;Franklin tree;8;;;46.5
7243;Japanese zelkova;8;0.52;75.12;46.5
7246;lotebush;8;;;45.6
7328;mountain silverbell;8;0.42;;44.68881663
7329;Ozark witchhazel;8;;;46.5
7331;American witchhazel;8;;;46.5
7432;Japanese raisintree;8;;;46.5
7469;yaupon;8;0.52;;47.48
7496;English walnut;8;0.44;92.0;47.729375
7515;goldenrain tree;8;0.52;75.12;45.87781667
7531;golden chain tree;8;0.52;75.12;47.48
7567;littleleaf leadtree;8;;;47.38666667
7577;Japanese privet;10;0.55;;47.375
7578;glossy privet;10;0.55;;47.375
7579;California privet;10;;;47.370436
7580;southern spicebush;8;;;46.5
7593;Amur honeysuckle;10;;;46.5
7631;star magnolia;8;0.43;91.75;44.05973417
7634;Chinese magnolia;8;0.43;91.75;47.795
7649;Siberian crab apple;8;0.61;78.0;47.165
7650;Japanese flowering crab apple;8;0.61;78.0;47.165
7651;paradise apple;8;0.61;78.0;47.165
7779;dawn redwood;4;0.41;74.28;50.1
8189;Japanese red pine;4;0.43;76.22;47.125
8197;five-needle pine;4;;;47.798125
8198;Japanese black pine;4;0.43;76.13;47.225
8200;Bunge's pine;4;;;47.798125
8219;Chinese pistache;8;0.52;75.12;41.849
8253;London planetree;8;0.46;81.0;47.69
8254;Oriental planetree;8;;;47.69
8274;yew plum pine;4;;;47.48
8296;hardy orange;8;0.53;;47.445
8313;Carolina poplar;6;;;48.07208333
8314;gray poplar;6;;;48.07208333
8348;cherry plum;8;0.47;53.0;47.61543478
8350;apricot;8;0.52;75.13;60.9143382
8357;Yoshino flowering cherry;8;0.47;53.0;47.61543478
8403;common hoptree;8;;;46.5
8420;pear spp.;8;0.52;75.12;47.34
8421;Callery pear;8;0.56;75.12;47.34
8423;common pear;8;0.56;75.12;47.34
8426;Chinese pear;8;0.56;75.12;47.34
8427;sawtooth oak;9;0.59;75.0;47.21657895
8429;bastard white oak;9;0.6;68.26667;47.21657895
8437;European turkey oak;9;;;47.21657895
8438;Texas live oak;9;0.6;75.3;47.2
8441;sand live oak;9;0.59;;47.21657895
8449;Darlington oak;9;0.59;83.0;47.99
8459;Sonoran scrub oak;9;;;47.21657895
8461;sandpaper oak;9;;;47.21657895
8471;Catawba rosebay;9;;;46.5
8475;winged sumac;8;;;47.783345
8477;smooth sumac;8;0.52;75.12;47.783345
8479;prairie sumac;8;0.43;;47.795
8486;bristly locust;8;;;46.99
8487;bastard oak;9;0.6;75.3;47.21657895
8495;dwarf palmetto;8;;;47.48
8502;pussy willow;6;0.36;127.0;48.04
8519;yellow willow;6;;;47.96
8523;diamondleaf willow;6;;;47.96
8524;silky willow;6;;;47.96
8527;European black elderberry;8;;;47.63925
8615;buckthorn bully;8;;;47.40691563
8647;Japanese pagoda tree;8;0.52;75.12;46.82168333
8657;false spiraea;8;;;46.5
8658;Greene's mountain ash;8;;;47.48
8659;western mountain ash;8;;;47.48
8672;mountain camellia;8;;;46.5
8673;American snowbell;8;0.52;75.12;47.48
8693;common lilac;8;;;45.7
8728;five-stamen tamarisk;8;;;47.48
8729;saltcedar;8;0.52;75.13;47.48
8738;English yew;1;0.6;47.0;47.2
8739;Japanese yew;1;0.6;47.0;47.2
8813;littleleaf linden;8;0.32;105.0;38.75
8814;Silver linden;8;0.32;105.0;48.18
8830;poison sumac;8;;;46.5
8851;Chinese elm;8;0.54;66.0;47.41
8852;English elm;8;0.54;65.84;47.41
8859;Mexican buckeye;8;0.52;75.12;45.6
8860;farkleberry;8;0.53;;47.445
8862;Japanese elm;8;0.54;65.84;47.41
8877;nannyberry;8;;;47.4625
8878;blackhaw;8;0.52;75.12;47.48
8879;rusty blackhaw;8;0.53;;47.445
8880;Siebold's arrowwood;8;;;47.4625
8942;common pricklyash;8;0.52;75.13;47.3725
8944;Hercules' club;8;0.55;;43.8
`,
} as const;
