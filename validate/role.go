package validate

// role says what an ingredient does in a recipe.
func (in Item) role() Role {
	switch k := in.Class.Kind; k {
	case ItemVegetable, ItemFruit:
		return in.Class.Produce.role()
	case ItemLegume, ItemMushroom, ItemMeat:
		return RoleLowAcid
	default:
		if r, ok := kindRoles[k]; ok {
			return r
		}
		return RoleOther
	}
}

// kindRoles are the roles of the kinds that have only one.
var kindRoles = map[ItemKind]Role{
	ItemVinegar: RoleAcid, ItemCitrusJuice: RoleAcid, ItemCitricAcid: RoleAcid,
	ItemWater: RoleWater, ItemSugar: RoleSugar, ItemSweetener: RoleSweetener, ItemSalt: RoleSalt,
	ItemSpice: RoleSpice, ItemHerb: RoleHerb, ItemGarlic: RoleHerb,
	ItemStarch: RoleStarch, ItemModStarch: RoleStarch, ItemFat: RoleOil, ItemButter: RoleButter,
	ItemEgg: RoleEgg, ItemPicklingLime: RoleLime, ItemPectin: RolePectin,
}

// role says what a food does in a recipe that holds it fresh.
func (p Produce) role() Role {
	switch {
	case p.Group == TomatoLike:
		return RoleTomato
	case p.Group == Aromatics:
		return RoleHerb
	case p.Group.Fruit() && p.Acidity != LowAcid:
		return RoleFruit
	}
	return RoleLowAcid
}

// swap is the name under which a food is compared. One kind of pepper may
// take the place of another, and small onions that of large ones.
func (p Produce) swap() string {
	switch {
	case p.Group == Peppers:
		return "pepper"
	case p.Name == "pearl onion":
		return "onion"
	}
	return p.Name
}

// ofRole picks the ingredients of a role.
func ofRole(items []Item, r Role) []Item {
	var of []Item
	for _, in := range items {
		if in.role() == r {
			of = append(of, in)
		}
	}
	return of
}
