/**
 * Scientific names of the species in species.ts, in the same order: a genus, then the epithets of the species that
 * follow one another in it. Apart from that list, since no cell asks for them and every cell would have to load them.
 * Made from test/published/tree/national/species.csv by test/support/national/write.ts; change it there, never here.
 */
export const scientificNames = {
  lines: `
Abies: spp., amabilis, balsamea, bracteata, concolor, fraseri, grandis, lasiocarpa, lasiocarpa, magnifica, shastensis, procera
Chamaecyparis: spp., lawsoniana, nootkatensis, thyoides
Cupressus: arizonica, bakeri, forbesii, macrocarpa, sargentii, macnabiana
Juniperus: spp., pinchotii, coahuilensis, flaccida, ashei, californica, deppeana, occidentalis, osteosperma, scopulorum, virginiana, virginiana, monosperma
Larix: spp., laricina, lyallii, occidentalis, kaempferi, sibirica
Calocedrus: decurrens
Picea: spp., abies, breweriana, engelmannii, glauca, mariana, pungens, rubens, sitchensis
Pinus: spp., albicaulis, aristata, attenuata, balfouriana, banksiana, edulis, clausa, contorta, coulteri, echinata, elliottii, engelmannii, flexilis, strobiformis, glabra, jeffreyi, lambertiana, leiophylla, monticola, muricata, palustris, ponderosa, pungens, radiata, resinosa, rigida, sabiniana, serotina, strobus, sylvestris, taeda, virginiana, monophylla, discolor, arizonica, nigra, washoensis, quadrifolia, torreyana, cembroides, remota, longaeva, monophylla, elliottii
Pseudotsuga: spp., macrocarpa, menziesii
Sequoia: sempervirens
Sequoiadendron: giganteum
Taxodium: spp., distichum, ascendens
Taxus: spp., brevifolia, floridana
Thuja: occidentalis, plicata
Torreya: spp., californica, taxifolia
Tsuga: spp., canadensis, caroliniana, heterophylla, mertensiana
Acacia: greggii
Acer: spp., barbatum, macrophyllum, negundo, nigrum, pensylvanicum, rubrum, saccharinum, saccharum, spicatum, platanoides, glabrum, grandidentatum, leucoderme
Aesculus: spp., glabra, flava, californica, glabra, pavia, sylvatica
Ailanthus: altissima
Albizia: julibrissin
Alnus: spp., rubra, rhombifolia, oblongifolia, glutinosa
Amelanchier: spp., arborea, sanguinea
Arbutus: spp., menziesii, arizonica, xalapensis
Asimina: triloba
Betula: spp., alleghaniensis, lenta, nigra, occidentalis, papyrifera, neoalaskana, uber, x utahensis, populifolia
Sideroxylon: lanuginosum
Carpinus: caroliniana
Carya: spp., aquatica, cordiformis, glabra, illinoinensis, laciniosa, myristiciformis, ovata, texana, alba, pallida, floridana, ovalis, carolinae-septentrionalis
Castanea: spp., dentata, pumila, pumila, mollissima
Chrysolepis: chrysophylla
Catalpa: bignonioides, speciosa
Celtis: spp., laevigata, occidentalis, laevigata
Cercis: canadensis
Cercocarpus: ledifolius
Cladrastis: kentukea
Cornus: spp., florida, nuttallii
Crataegus: spp., crus-galli, mollis, brainerdii, calpodendron, chrysocarpa, dilatata, flabellata, monogyna, pedicellata
Eucalyptus: camaldulensis
Diospyros: virginiana, texana
Ehretia: anacua
Fagus: grandifolia
Fraxinus: spp., americana, latifolia, nigra, pennsylvanica, profunda, quadrangulata, velutina, caroliniana, texensis
Gleditsia: spp., aquatica, triacanthos
Gordonia: lasianthus
Ginkgo: biloba
Gymnocladus: dioicus
Halesia: spp., carolina, diptera, parviflora
Ilex: opaca
Juglans: cinerea, nigra, hindsii, californica, microcarpa, major
Liquidambar: styraciflua
Liriodendron: tulipifera
Lithocarpus: densiflorus
Maclura: pomifera
Magnolia: acuminata, grandiflora, virginiana, macrophylla, fraseri, pyramidata, tripetala
Malus: spp., fusca, angustifolia, coronaria, ioensis
Morus: spp., rubra, microphylla
Nyssa: spp., aquatica, ogeche, sylvatica, biflora
Ostrya: virginiana
Oxydendrum: arboreum
Paulownia: tomentosa
Persea: borbonia
Planera: aquatica
Platanus: spp., racemosa, occidentalis, wrightii
Populus: spp., balsamifera, deltoides, grandidentata, heterophylla, deltoides, tremuloides, balsamifera, fremontii, angustifolia, alba, nigra
Prosopis: glandulosa, velutina, pubescens
Prunus: pensylvanica, serotina, virginiana, persica, nigra, americana, emarginata, alleghaniensis, angustifolia, avium, cerasus, domestica, mahaleb
Quercus: spp., agrifolia, alba, arizonica, bicolor, chrysolepis, coccinea, douglasii, sinuata, ellipsoidalis, emoryi, engelmannii, falcata, pagoda, gambelii, garryana, ilicifolia, imbricaria, kelloggii, laevis, laurifolia, lobata, lyrata, macrocarpa, marilandica, michauxii, muehlenbergii, nigra, texana, oblongifolia, palustris, phellos, prinus, rubra, shumardii, stellata, similis, velutina, virginiana, wislizeni, margarettiae, minima, incana, hypoleucoides, oglethorpensis, prinoides, grisea, rugosa, graciliformis
Cupaniopsis: anacardioides
Condalia: hookeri
Ebenopsis: ebano
Leucaena: pulverulenta
Sophora: affinis
Ficus: aurea
Piscidia: piscipula
Simarouba: glauca
Syzygium: cumini
Robinia: pseudoacacia, neomexicana
Acoelorraphe: wrightii
Coccothrinax: argentata
Sabal: mexicana, palmetto
Family Arecaceae: not listed above
Sapindus: saponaria
Salix: spp., amygdaloides, nigra, bebbiana, bonplandiana, caroliniana, pyrifolia, alba, scouleriana, x sepulcralis
Sassafras: albidum
Sorbus: spp., americana, aucuparia, decora
Tilia: spp., americana, americana, americana
Ulmus: spp., alata, americana, crassifolia, pumila, rubra, serotina, thomasii
Umbellularia: californica
Yucca: brevifolia
Olneya: tesota
Triadica: sebifera
Cotinus: obovatus
Elaeagnus: angustifolia
Tree: unknown
Crataegus: phaenopyrum, succulenta, uniflora
Acer: campestre, circinatum, ginnala, griseum, mono, palmatum, pseudoplatanus, tataricum, x freemanii, miyabei, triflorum, platanoides x truncatum
Aesculus: hippocastanum, parviflora
Alnus: incana, serrulata, viridis
Amelanchier: laevis
Aralia: elata, spinosa
Asimina: parviflora
Baccharis: halimifolia
Betula: pendula, platyphylla, pubescens
Buddleja: alternifolia
Butia: capitata
Buxus: sempervirens
Camellia: japonica
Caragana: arborescens
Carpinus: betulus
Castanea: crenata, sativa
Catalpa: ovata
Ceanothus: velutinus
Cedrus: deodara
Cephalanthus: occidentalis
Cercidiphyllum: japonicum
Cercis: orbiculata
Chamaecyparis: obtusa, pisifera
Chilopsis: linearis
Fraxinus: excelsior
Clethra: acuminata
Colutea: arborescens
Cornus: kousa
Corylus: americana, colurna
Cotinus: coggygria
Cupressocyparis: leylandii
Cydonia: oblonga
Euonymus: alatus
Fagus: sylvatica
Larix: decidua
Ilex: mucronata
Persea: palustris
Phellodendron: amurense
Picea: omorika
Prunus: laurocerasus, serrulata, mexicana
Cornus: drummondii
Purshia: stansburiana
Quercus: arkansana, georgiana, havardii, myrtifolia, robur, sinuata
Rhamnus: cathartica
Rhus: typhina
Salix: elaeagnos, fragilis, matsudana
Sambucus: racemosa
Senna: corymbosa
Styrax: grandifolius
Syringa: reticulata
Firmiana: simplex
Vitex: negundo
Franklinia: alatamaha
Zelkova: serrata
Ziziphus: obtusifolia
Halesia: tetraptera
Hamamelis: vernalis, virginiana
Hovenia: dulcis
Ilex: vomitoria
Juglans: regia
Koelreuteria: paniculata
Laburnum: anagyroides
Leucaena: retusa
Ligustrum: japonicum, lucidum, ovalifolium
Lindera: melissifolia
Lonicera: maackii
Magnolia: stellata, x soulangiana
Malus: baccata, floribunda, pumila
Metasequoia: glyptostroboides
Pinus: densiflora, parviflora, thunbergii, bungeana
Pistacia: chinensis
Platanus: hybrida, orientalis
Podocarpus: macrophyllus
Poncirus: trifoliata
Populus: x canadensis, x canescens
Prunus: cerasifera, armeniaca, x yedoensis
Ptelea: trifoliata
Pyrus: spp., calleryana, communis, pyrifolia
Quercus: acutissima, austrina, cerris, fusiformis, geminata, hemisphaerica, turbinella, vaseyana
Rhododendron: catawbiense
Rhus: copallinum, glabra, lanceolata
Robinia: hispida
Quercus: sinuata
Sabal: minor
Salix: discolor, lutea, planifolia, sericea
Sambucus: nigra
Sideroxylon: lycioides
Styphnolobium: japonicum
Sorbaria: spp.
Sorbus: scopulina, sitchensis
Stewartia: ovata
Styrax: americanus
Syringa: vulgaris
Tamarix: chinensis, ramosissima
Taxus: baccata, cuspidata
Tilia: cordata, tomentosa
Toxicodendron: vernix
Ulmus: parvifolia, procera
Ungnadia: speciosa
Vaccinium: arboreum
Ulmus: davidiana
Viburnum: lentago, prunifolium, rufidulum, sieboldii
Zanthoxylum: americanum, clava-herculis
`,
} as const;
